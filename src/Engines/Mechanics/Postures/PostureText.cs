using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>Reads and writes postures as readable JSON.</summary>
/// <remarks>
/// <c>{ "key", "group", "bow", "lean", "turn", "joints": { "kneeFlexion": 90, "hipFlexion.left": 30 }, "touches": ["foot.left"] }</c>,
/// angles in degrees, a joint without a side set on both. What is left out is 0.
/// </remarks>
public static class PostureText
{
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, IndentSize = 2 };

    /// <summary>Reads a posture and puts it on the floor once, to see that it can stand there.</summary>
    /// <param name="json">The text.</param>
    public static PostureReading Read(string json)
    {
        JsonObject? root;
        try
        {
            root = JsonNode.Parse(json, null, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true }) as JsonObject;
        }
        catch (JsonException e)
        {
            return new PostureReading(null, [new(PostureProblemKind.NotJson, $"{e.LineNumber + 1}:{e.BytePositionInLine + 1}")]);
        }
        if (root is null) return new PostureReading(null, [new(PostureProblemKind.NotJson, "1:1", "{ }")]);

        var problems = new List<PostureProblem>();
        var key = Word(root, "key", problems);
        var group = Name<PostureGroup>(Word(root, "group", problems), "group", problems);
        var pose = Joints(root["joints"], problems).Placed(Rad(root, "bow", problems), Rad(root, "lean", problems), Rad(root, "turn", problems));
        var contacts = Touches(root["touches"], problems);
        if (problems.Count > 0) return new PostureReading(null, problems);

        var posture = new Posture(key, group, pose, contacts);
        var body = posture.Settle();
        return body.IsTouching
            ? new PostureReading(posture, [])
            : new PostureReading(null, [new(PostureProblemKind.CannotTouch, Statures(body.GapH), Statures(SettledBody.TouchingH))]);
    }

    /// <summary>The posture as text, angles to a tenth of a degree.</summary>
    /// <param name="posture">The posture.</param>
    public static string Write(Posture posture)
    {
        var joints = new JsonObject();
        foreach (var joint in Enum.GetValues<Joint>())
        {
            var (leftDeg, rightDeg) = (Deg(posture.Pose.AngleRad(joint, Side.Left)), Deg(posture.Pose.AngleRad(joint, Side.Right)));
            if (leftDeg == rightDeg)
            {
                if (leftDeg != 0) joints[Camel(joint)] = leftDeg;
                continue;
            }
            if (leftDeg != 0) joints[Camel(joint) + ".left"] = leftDeg;
            if (rightDeg != 0) joints[Camel(joint) + ".right"] = rightDeg;
        }
        var root = new JsonObject { ["key"] = posture.Key, ["group"] = Camel(posture.Group), ["bow"] = Deg(posture.Pose.BowRad) };
        if (Deg(posture.Pose.LeanRad) != 0) root["lean"] = Deg(posture.Pose.LeanRad);
        if (Deg(posture.Pose.TurnRad) != 0) root["turn"] = Deg(posture.Pose.TurnRad);
        root["joints"] = joints;
        root["touches"] = new JsonArray([.. posture.Contacts.Select(c => (JsonNode)(c.Side == Side.Middle ? Camel(c.Part) : $"{Camel(c.Part)}.{Camel(c.Side)}"))]);
        return root.ToJsonString(Layout) + "\n";
    }

    private static Pose Joints(JsonNode? node, List<PostureProblem> problems)
    {
        var pose = Pose.Upright;
        if (node is null) return pose;
        if (node is not JsonObject joints)
        {
            problems.Add(new(PostureProblemKind.WrongKind, "joints", "{ }"));
            return pose;
        }
        foreach (var (name, value) in joints)
        {
            var count = problems.Count;
            var parts = name.Split('.');
            var joint = Name<Joint>(parts[0], name, problems);
            var side = parts.Length == 1 ? Side.Middle : Name<Side>(parts[1], name, problems);
            var angleDeg = Number(value, name, problems);
            if (problems.Count > count) continue;
            var (leastDeg, mostDeg) = JointLimits.Of(joint);
            if (angleDeg < leastDeg || angleDeg > mostDeg)
                problems.Add(new(PostureProblemKind.BeyondLimit, $"{name} {angleDeg.ToString(CultureInfo.InvariantCulture)}", $"{leastDeg}..{mostDeg}"));
            else
                pose = pose.With(joint, side, angleDeg * Math.PI / 180);
        }
        return pose;
    }

    private static List<Contact> Touches(JsonNode? node, List<PostureProblem> problems)
    {
        var contacts = new List<Contact>();
        if (node is not JsonArray { Count: > 0 } touches)
        {
            problems.Add(new(PostureProblemKind.Missing, "touches", Allowed<ContactPart>()));
            return contacts;
        }
        foreach (var item in touches)
        {
            var name = item is JsonValue value && value.TryGetValue(out string? text) ? text : "";
            var parts = name.Split('.');
            var count = problems.Count;
            var part = Name<ContactPart>(parts[0], name, problems);
            var side = parts.Length == 1 ? Side.Middle : Name<Side>(parts[1], name, problems);
            if (problems.Count > count) continue;
            if (SegmentFigures.IsPaired(ContactPatch.Of(part).Segment) != (side != Side.Middle))
                problems.Add(new(PostureProblemKind.UnknownName, name, side == Side.Middle ? $"{name}.left, {name}.right" : parts[0]));
            else
                contacts.Add(new(part, side));
        }
        return contacts;
    }

    private static string Word(JsonObject root, string name, List<PostureProblem> problems)
    {
        if (root[name] is JsonValue value && value.TryGetValue(out string? text) && text.Length > 0) return text;
        problems.Add(new(PostureProblemKind.Missing, name));
        return "";
    }

    private static double Rad(JsonObject root, string name, List<PostureProblem> problems) =>
        root[name] is { } node ? Number(node, name, problems) * Math.PI / 180 : 0;

    private static double Number(JsonNode? node, string name, List<PostureProblem> problems)
    {
        if (node is JsonValue value && value.TryGetValue(out double number) && double.IsFinite(number)) return number;
        problems.Add(new(PostureProblemKind.WrongKind, name, "0"));
        return 0;
    }

    private static T Name<T>(string text, string at, List<PostureProblem> problems) where T : struct, Enum
    {
        foreach (var value in Enum.GetValues<T>())
            if (Camel(value) == text) return value;
        if (text.Length > 0) problems.Add(new(PostureProblemKind.UnknownName, at, Allowed<T>()));
        return default;
    }

    private static string Allowed<T>() where T : struct, Enum => string.Join(", ", Enum.GetValues<T>().Select(Camel));

    private static string Camel<T>(T value) where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    private static string Statures(double lengthH) => lengthH.ToString("0.000", CultureInfo.InvariantCulture);

    private static double Deg(double angleRad) => Math.Round(angleRad * 180 / Math.PI, 1) + 0.0;
}
