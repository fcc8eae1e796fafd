using System.Globalization;
using System.Text.Json.Nodes;

namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>Reads a posture's text and collects everything that is wrong with it.</summary>
internal sealed class PostureReader
{
    private readonly List<PostureProblem> _problems = [];

    private PostureReader()
    {
    }

    public static PostureReading Read(JsonObject root)
    {
        var reader = new PostureReader();
        var posture = reader.Posture(root);
        if (reader._problems.Count > 0) return new PostureReading(null, reader._problems);

        var settled = posture.Settle();
        if (settled.IsTouching) return new PostureReading(posture, []);
        var (gapH, allowedH) = settled.JoinGapH > SettledPosture.JoinedH ? (settled.JoinGapH, SettledPosture.JoinedH) : (settled.Bodies.Max(b => b.GapH), SettledBody.TouchingH);
        return new PostureReading(null, [new(PostureProblemKind.CannotTouch, Statures(gapH), Statures(allowedH))]);
    }

    private Posture Posture(JsonObject root)
    {
        var key = Word(root, "key");
        // It names files and addresses.
        if (key.Any(c => !char.IsAsciiLetterLower(c) && !char.IsAsciiDigit(c) && c != '-')) Wrong(key, "key", "two-feet");
        var group = Name<PostureGroup>(Word(root, "group", Allowed<PostureGroup>()), "group");
        var posture = new Posture(key, group, Pose(root), Contacts(root, "touches", isNeeded: true)) { Wall = Contacts(root, "wall", isNeeded: false) };
        return root["partner"] switch
        {
            null => posture,
            JsonObject partner => posture with { Partner = new Partner(Pose(partner), Contacts(partner, "touches", isNeeded: false), Joins(partner)) },
            _ => Wrong(posture, "partner", "{ }"),
        };
    }

    private Pose Pose(JsonObject root)
    {
        var pose = Mechanics.Pose.Upright;
        if (root["joints"] is JsonObject joints)
            foreach (var (name, value) in joints) pose = With(pose, name, value);
        else if (root["joints"] is not null)
            Wrong(pose, "joints", "{ }");
        return pose.Placed(Rad(root, "bow"), Rad(root, "lean"), Rad(root, "turn"));
    }

    private Pose With(Pose pose, string name, JsonNode? value)
    {
        var count = _problems.Count;
        var parts = name.Split('.');
        var joint = Name<Joint>(parts[0], name);
        var side = parts.Length == 1 ? Side.Middle : Name<Side>(parts[1], name);
        var angleDeg = Number(value, name);
        if (_problems.Count > count) return pose;
        var (leastDeg, mostDeg) = JointLimits.Of(joint);
        if (angleDeg >= leastDeg && angleDeg <= mostDeg) return pose.With(joint, side, angleDeg * Math.PI / 180);
        _problems.Add(new(PostureProblemKind.BeyondLimit, $"{name} {angleDeg.ToString(CultureInfo.InvariantCulture)}", $"{leastDeg}..{mostDeg}"));
        return pose;
    }

    private List<Contact> Contacts(JsonObject root, string name, bool isNeeded)
    {
        var contacts = new List<Contact>();
        if (root[name] is not JsonArray touches || (isNeeded && touches.Count == 0))
        {
            if (isNeeded || root[name] is not null) _problems.Add(new(PostureProblemKind.Missing, name, Allowed<ContactPart>()));
            return contacts;
        }
        foreach (var item in touches)
            if (Contact(item is JsonValue value && value.TryGetValue(out string? text) ? text : "") is { } contact) contacts.Add(contact);
        return contacts;
    }

    private List<Join> Joins(JsonObject partner)
    {
        var joins = new List<Join>();
        if (partner["joins"] is not JsonObject { Count: > 0 } pairs) return Wrong(joins, "partner.joins", "{ }");
        foreach (var (name, value) in pairs)
        {
            var own = Contact(name);
            var on = Contact(value is JsonValue word && word.TryGetValue(out string? text) ? text : "");
            if (own is not null && on is not null) joins.Add(new Join(own.Value, on.Value));
        }
        return joins;
    }

    private Contact? Contact(string name)
    {
        var count = _problems.Count;
        var parts = name.Split('.');
        if (name.Length == 0) _problems.Add(new(PostureProblemKind.UnknownName, "\"\"", Allowed<ContactPart>()));
        var part = Name<ContactPart>(parts[0], name);
        var side = parts.Length == 1 ? Side.Middle : Name<Side>(parts[1], name);
        if (_problems.Count > count) return null;
        if (SegmentFigures.IsPaired(ContactPatch.Of(part).Segment) == (side is Side.Left or Side.Right)) return new Contact(part, side);
        _problems.Add(new(PostureProblemKind.UnknownName, name, side == Side.Middle ? $"{name}.left, {name}.right" : parts[0]));
        return null;
    }

    private string Word(JsonObject root, string name, string allowed = "")
    {
        if (root[name] is JsonValue value && value.TryGetValue(out string? text) && text.Length > 0) return text;
        _problems.Add(new(PostureProblemKind.Missing, name, allowed));
        return "";
    }

    private double Rad(JsonObject root, string name) => root[name] is { } node ? Number(node, name) * Math.PI / 180 : 0;

    private double Number(JsonNode? node, string name) =>
        node is JsonValue value && value.TryGetValue(out double number) && double.IsFinite(number) ? number : Wrong(0.0, name, "0");

    private T Name<T>(string text, string at) where T : struct, Enum
    {
        foreach (var value in Enum.GetValues<T>())
            if (PostureText.Camel(value) == text) return value;
        if (text.Length > 0) _problems.Add(new(PostureProblemKind.UnknownName, at, Allowed<T>()));
        return default;
    }

    private T Wrong<T>(T answer, string at, string allowed)
    {
        _problems.Add(new(PostureProblemKind.WrongKind, at, allowed));
        return answer;
    }

    private static string Allowed<T>() where T : struct, Enum => string.Join(", ", Enum.GetValues<T>().Select(PostureText.Camel));

    private static string Statures(double lengthH) => lengthH.ToString("0.000", CultureInfo.InvariantCulture);
}
