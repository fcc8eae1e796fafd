using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Records.Tests.Floor;

/// <summary>The contracts between program and floor as one JSON schema, from the C# types: what the floor's own types are made from.</summary>
internal static class ContractSchema
{
    private static readonly Type[] Named =
    [
        .. typeof(LessonBundle).Assembly.GetExportedTypes()
            .Where(t => t.Namespace == typeof(LessonBundle).Namespace || (t.IsEnum && IsUsed(t)) || t == typeof(Entry) || t == typeof(EntryFact))
            .OrderBy(t => t.Name, StringComparer.Ordinal),
    ];

    public static string Text()
    {
        var definitions = new JsonObject();
        foreach (var type in Named)
        {
            var node = EntryJson.Options.GetJsonSchemaAsNode(type, new() { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = (c, schema) => Referred(c, schema, type) });
            definitions[type.Name] = WithoutNulls(node);
        }
        var whole = new JsonObject
        {
            ["$schema"] = "http://json-schema.org/draft-07/schema#",
            ["title"] = "Contracts",
            ["type"] = "object",
            ["additionalProperties"] = false,
            ["definitions"] = definitions,
        };
        return whole.ToJsonString(new() { WriteIndented = true, IndentSize = 2, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }) + "\n";
    }

    private static JsonNode Referred(JsonSchemaExporterContext context, JsonNode schema, Type root)
    {
        var type = Nullable.GetUnderlyingType(context.TypeInfo.Type) ?? context.TypeInfo.Type;
        // What is derived from the root (the kinds of fact) is written out where it stands.
        return context.Path.Length > 0 && type != root && Named.Contains(type) && !root.IsAssignableFrom(type)
            ? new JsonObject { ["$ref"] = "#/definitions/" + type.Name }
            : schema;
    }

    // Nothing that is none is ever written, so what may be none may be missing.
    private static JsonNode WithoutNulls(JsonNode node)
    {
        if (node is JsonObject o)
        {
            if (o["properties"] is JsonObject properties)
            {
                var required = (o["required"] as JsonArray ?? []).Select(r => (string)r!).ToHashSet();
                foreach (var (name, property) in properties)
                {
                    if (property is JsonObject told && told.ContainsKey("const")) required.Add(name);
                    if (property is JsonObject p && p["type"] is JsonArray types && types.Any(t => (string?)t == "null"))
                    {
                        required.Remove(name);
                        string[] left = [.. types.Select(t => (string)t!).Where(t => t != "null")];
                        p["type"] = left.Length == 1 ? left[0] : new JsonArray([.. left.Select(l => (JsonNode)l)]);
                    }
                }
                if (required.Count > 0) o["required"] = new JsonArray([.. required.Order(StringComparer.Ordinal).Select(r => (JsonNode)r)]);
                else o.Remove("required");
                o["additionalProperties"] = false;
            }
            foreach (var (_, child) in o) if (child is not null) WithoutNulls(child);
        }
        else if (node is JsonArray a)
        {
            foreach (var child in a) if (child is not null) WithoutNulls(child);
        }
        return node;
    }

    private static bool IsUsed(Type enumeration) => typeof(LessonBundle).Assembly.GetExportedTypes()
        .Where(t => t.Namespace == typeof(LessonBundle).Namespace || t == typeof(Entry) || t.IsSubclassOf(typeof(EntryFact)))
        .SelectMany(t => t.GetProperties())
        .Any(p => (Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType) == enumeration);
}
