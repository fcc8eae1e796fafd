using System.Text.Json;
using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks.Files;

/// <summary>Takes the parts out of a task's JSON and collects everything there is to say about it, so that an author sees all mistakes at once.</summary>
internal sealed class TaskJson(string fileName)
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    public string FileName => fileName;

    public List<Finding> Findings { get; } = [];

    public bool IsRefused => Findings.Any(f => f.IsRefused);

    /// <summary>Reads the text and hands its root to the reader; nothing where it is not JSON or not an object.</summary>
    public T? Read<T>(string text, string format, Func<JsonElement, T?> read) where T : class
    {
        try
        {
            using var document = JsonDocument.Parse(text, Lenient);
            if (document.RootElement.ValueKind == JsonValueKind.Object) return read(document.RootElement);
            Refuse("TaskFileNotATask", format);
        }
        catch (JsonException broken)
        {
            // The parser counts from 0, editors from 1.
            Refuse("TaskFileNotJson", (broken.LineNumber ?? 0) + 1, (broken.BytePositionInLine ?? 0) + 1);
        }
        return null;
    }

    /// <summary>The file's format without a finding; empty where it cannot be read as JSON.</summary>
    public static string FormatOf(string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text, Lenient);
            return document.RootElement.ValueKind == JsonValueKind.Object
                && document.RootElement.TryGetProperty("format", out var format) && format.ValueKind == JsonValueKind.String ? format.GetString()! : "";
        }
        catch (JsonException)
        {
            return "";
        }
    }

    public bool HasFormat(JsonElement root, string expected, string? orElsewhere = null)
    {
        var format = Optional(root, "format", "format");
        // Another format may mean anything by its fields: reading on would report nonsense.
        if (format != expected) Refuse("TaskFileOtherFormat", format, orElsewhere is null ? expected : $"{expected}\", \"{orElsewhere}");
        return format == expected;
    }

    public bool IsObject(JsonElement value, string place)
    {
        if (value.ValueKind == JsonValueKind.Object) return true;
        Refuse("TaskFileNeedsObject", place);
        return false;
    }

    public JsonElement? Object(JsonElement owner, string field, string place)
    {
        if (owner.TryGetProperty(field, out var value) && value.ValueKind == JsonValueKind.Object) return value;
        Refuse("TaskFileNeedsObject", place);
        return null;
    }

    public Dose Dose(JsonElement level, string place)
    {
        if (level.TryGetProperty("dose", out var dose)
            && dose.ValueKind == JsonValueKind.Object
            && dose.EnumerateObject().ToList() is [var only]
            && TaskFileWords.Doses.TryGetValue(only.Name, out var kind)
            && only.Value.ValueKind == JsonValueKind.Number
            && only.Value.TryGetDecimal(out var amount)
            && amount > 0)
        {
            return new Dose(kind, amount);
        }
        Refuse("TaskFileNeedsDose", place, string.Join(", ", TaskFileWords.Doses.Keys));
        return new Dose(DoseKind.HoldS, 1);
    }

    public IReadOnlyList<BodyDemand> Demands(JsonElement level, string place) => level.TryGetProperty("demands", out _)
        ? List(level, "demands", place).Select((d, i) => Demand(d, $"{place}[{i}]")).ToList()
        : [];

    public T Word<T>(JsonElement value, string place) where T : struct, Enum
    {
        var known = TaskFileWords.All<T>();
        if (value.ValueKind == JsonValueKind.String && known.TryGetValue(value.GetString()!, out var named)) return named;
        Refuse("TaskFileUnknownWord", place, value.ToString(), string.Join(", ", known.Keys));
        return default;
    }

    public T Word<T>(JsonElement owner, string field, string place) where T : struct, Enum => Word<T>(Field(owner, field), place);

    public Guid Id(JsonElement value, string place)
    {
        if (value.ValueKind == JsonValueKind.String && value.TryGetGuid(out var guid) && guid != Guid.Empty) return guid;
        Refuse("TaskFileNeedsId", place);
        return Guid.Empty;
    }

    public Guid Id(JsonElement owner, string field, string place) => Id(Field(owner, field), place);

    public decimal Number(JsonElement owner, string field, string place)
    {
        if (Field(owner, field) is { ValueKind: JsonValueKind.Number } number && number.TryGetDecimal(out var amount)) return amount;
        Refuse("TaskFileNeedsNumber", place);
        return 0;
    }

    public string Required(JsonElement owner, string field, string place) => Text(Field(owner, field), place);

    public string Optional(JsonElement owner, string field, string place) =>
        owner.TryGetProperty(field, out var value) ? Text(value, place, mayBeEmpty: true) : "";

    public string Text(JsonElement value, string place, bool mayBeEmpty = false)
    {
        if (value.ValueKind == JsonValueKind.String && (mayBeEmpty || !string.IsNullOrWhiteSpace(value.GetString()))) return value.GetString()!;
        Refuse("TaskFileNeedsText", place);
        return "";
    }

    public IReadOnlyList<JsonElement> List(JsonElement owner, string field, string place)
    {
        if (owner.TryGetProperty(field, out var list) && list.ValueKind == JsonValueKind.Array) return list.EnumerateArray().ToList();
        Refuse("TaskFileNeedsList", place);
        return [];
    }

    public IReadOnlyList<string> Texts(JsonElement owner, string field, string place) =>
        [.. List(owner, field, place).Select((text, i) => Text(text, $"{place}[{i}]"))];

    public void PassOver(JsonElement owner, string prefix, string[] known)
    {
        foreach (var field in owner.EnumerateObject().Where(f => !known.Contains(f.Name, StringComparer.Ordinal)))
        {
            Findings.Add(new Finding(FindingSeverity.Flagged, "TaskFileUnknownField", fileName, prefix + field.Name));
        }
    }

    public void Refuse(string key, params object[] arguments) =>
        Findings.Add(new Finding(FindingSeverity.Refused, key, [fileName, .. arguments]));

    private static JsonElement Field(JsonElement owner, string field) => owner.TryGetProperty(field, out var value) ? value : default;

    private BodyDemand Demand(JsonElement demand, string place)
    {
        if (demand.ValueKind == JsonValueKind.String && TaskFileWords.Demands.TryGetValue(demand.GetString()!, out var known)) return known;
        Refuse("TaskFileUnknownDemand", place, demand.ToString(), string.Join(", ", TaskFileWords.Demands.Keys));
        return default;
    }
}
