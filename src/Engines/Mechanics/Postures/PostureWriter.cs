using System.Text.Json;
using System.Text.Json.Nodes;

namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>Writes a posture's text.</summary>
internal static class PostureWriter
{
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, IndentSize = 2, NewLine = "\n" };

    public static string Write(Posture posture)
    {
        var root = new JsonObject { ["key"] = posture.Key, ["group"] = PostureText.Camel(posture.Group) };
        Body(root, posture.Pose, posture.Contacts);
        if (posture.Wall.Count > 0) root["wall"] = Names(posture.Wall);
        if (posture.Partner is { } partner)
        {
            var second = new JsonObject();
            Body(second, partner.Pose, partner.Contacts);
            var joins = new JsonObject();
            foreach (var join in partner.Joins) joins[Name(join.Own)] = Name(join.On);
            second["joins"] = joins;
            root["partner"] = second;
        }
        return root.ToJsonString(Layout) + "\n";
    }

    private static void Body(JsonObject into, Pose pose, IReadOnlyList<Contact> contacts)
    {
        Set(into, "bow", Deg(pose.BowRad));
        Set(into, "lean", Deg(pose.LeanRad));
        Set(into, "turn", Deg(pose.TurnRad));
        into["joints"] = Joints(pose);
        into["touches"] = Names(contacts);
    }

    private static JsonObject Joints(Pose pose)
    {
        var joints = new JsonObject();
        foreach (var joint in Enum.GetValues<Joint>())
        {
            var (leftDeg, rightDeg) = (Deg(pose.AngleRad(joint, Side.Left)), Deg(pose.AngleRad(joint, Side.Right)));
            if (leftDeg == rightDeg)
            {
                Set(joints, PostureText.Camel(joint), leftDeg);
                continue;
            }
            Set(joints, PostureText.Camel(joint) + ".left", leftDeg);
            Set(joints, PostureText.Camel(joint) + ".right", rightDeg);
        }
        return joints;
    }

    private static void Set(JsonObject into, string name, double angleDeg)
    {
        if (angleDeg != 0) into[name] = angleDeg;
    }

    private static JsonArray Names(IEnumerable<Contact> contacts) => new([.. contacts.Select(c => (JsonNode)Name(c))]);

    private static string Name(Contact contact) =>
        contact.Side == Side.Middle ? PostureText.Camel(contact.Part) : $"{PostureText.Camel(contact.Part)}.{PostureText.Camel(contact.Side)}";

    private static double Deg(double angleRad) => Math.Round(angleRad * 180 / Math.PI, 1) + 0.0;
}
