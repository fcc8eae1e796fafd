using System.Text.Json;
using System.Text.Json.Nodes;

namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>Reads and writes postures as readable JSON.</summary>
/// <remarks>
/// <c>{ "key", "group", "bow", "lean", "turn", "joints": { "kneeFlexion": 90, "hipFlexion.left": 30 }, "touches": ["foot.left"] }</c>,
/// angles in degrees, a joint without a side set on both. What is left out is 0. A posture may lean on a wall, <c>"wall": ["heel.left"]</c>,
/// and may have a <c>"partner"</c>: bow, lean, turn, joints and touches of its own, and <c>"joins": { "foot.left": "knee.right" }</c>,
/// the partner's part first.
/// </remarks>
public static class PostureText
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>Reads a posture and puts it on the floor once, to see that it can stand there.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The posture, or what is wrong, each with its place; a gap in statures where the contacts cannot touch.</returns>
    public static PostureReading Read(string json)
    {
        try
        {
            return JsonNode.Parse(json, null, Lenient) is JsonObject root
                ? PostureReader.Read(root)
                : new PostureReading(null, [new(PostureProblemKind.NotJson, "1:1", "{ }")]);
        }
        catch (JsonException e)
        {
            return new PostureReading(null, [new(PostureProblemKind.NotJson, $"{e.LineNumber + 1}:{e.BytePositionInLine + 1}")]);
        }
        catch (ArgumentException)
        {
            // A name given twice in one object comes up only when the object is looked into.
            return new PostureReading(null, [new(PostureProblemKind.NotJson, "1:1", "{ }")]);
        }
    }

    /// <summary>The posture as text, angles to a tenth of a degree.</summary>
    /// <param name="posture">The posture.</param>
    public static string Write(Posture posture) => PostureWriter.Write(posture);

    internal static string Camel<T>(T value) where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());
}
