using System.Text.Json;
using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks.Files;

/// <summary>Reads one task file and collects everything there is to say about it, so that an author sees all mistakes at once.</summary>
internal sealed class TaskFileReader(string fileName, Guid schoolId)
{
    private static readonly string[] TaskFields = ["format", "id", "name", "purpose", "cues", "caution", "levels"];
    private static readonly string[] LevelFields = ["id", "name", "dose", "demands", "posture"];

    private readonly List<Finding> _findings = [];
    private readonly HashSet<Guid> _levelIds = [];

    public TaskReading Read(string text)
    {
        MovementTask? task = null;
        try
        {
            using var document = JsonDocument.Parse(
                text, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
            task = Task(document.RootElement);
        }
        catch (JsonException broken)
        {
            // The parser counts from 0, editors from 1.
            Refuse("TaskFileNotJson", (broken.LineNumber ?? 0) + 1, (broken.BytePositionInLine ?? 0) + 1);
        }
        return new TaskReading(fileName, _findings.Any(f => f.Severity == FindingSeverity.Refused) ? null : task, _findings);
    }

    private MovementTask? Task(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            Refuse("TaskFileNotATask", TaskFile.Format);
            return null;
        }
        var format = Optional(root, "format", "format");
        if (format != TaskFile.Format)
        {
            // Another format may mean anything by its fields: reading on would report nonsense.
            Refuse("TaskFileOtherFormat", format, TaskFile.Format);
            return null;
        }
        PassOver(root, "", TaskFields);
        return new MovementTask
        {
            SchoolId = schoolId,
            Id = Id(root, "id"),
            Name = Required(root, "name", "name"),
            Purpose = Optional(root, "purpose", "purpose"),
            Cues = List(root, "cues", "cues").Select((cue, i) => Text(cue, $"cues[{i}]")).ToList(),
            Caution = Optional(root, "caution", "caution"),
            Levels = List(root, "levels", "levels").Select((level, i) => Level(level, $"levels[{i}]")).OfType<Level>().ToList(),
        };
    }

    private Level? Level(JsonElement level, string place)
    {
        if (level.ValueKind != JsonValueKind.Object)
        {
            Refuse("TaskFileNeedsObject", place);
            return null;
        }
        PassOver(level, place + ".", LevelFields);
        var id = Id(level, place + ".id");
        if (id != Guid.Empty && !_levelIds.Add(id)) Refuse("TaskFileSameLevelId", place + ".id", id);
        return new Level
        {
            Id = id,
            Name = Required(level, "name", place + ".name"),
            Dose = Dose(level, place + ".dose"),
            Demands = level.TryGetProperty("demands", out _)
                ? List(level, "demands", place + ".demands").Select((d, i) => Demand(d, $"{place}.demands[{i}]")).ToList()
                : [],
            Posture = level.TryGetProperty("posture", out var posture) ? Text(posture, place + ".posture") : null,
        };
    }

    private Dose Dose(JsonElement level, string place)
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

    private BodyDemand Demand(JsonElement demand, string place)
    {
        if (demand.ValueKind == JsonValueKind.String && TaskFileWords.Demands.TryGetValue(demand.GetString()!, out var known)) return known;
        Refuse("TaskFileUnknownDemand", place, demand.ToString(), string.Join(", ", TaskFileWords.Demands.Keys));
        return default;
    }

    private Guid Id(JsonElement owner, string place)
    {
        if (owner.TryGetProperty("id", out var id) && id.ValueKind == JsonValueKind.String && id.TryGetGuid(out var guid) && guid != Guid.Empty) return guid;
        Refuse("TaskFileNeedsId", place);
        return Guid.Empty;
    }

    private string Required(JsonElement owner, string field, string place)
    {
        if (owner.TryGetProperty(field, out var value)) return Text(value, place);
        Refuse("TaskFileNeedsText", place);
        return "";
    }

    private string Optional(JsonElement owner, string field, string place) =>
        owner.TryGetProperty(field, out var value) ? Text(value, place, mayBeEmpty: true) : "";

    private string Text(JsonElement value, string place, bool mayBeEmpty = false)
    {
        if (value.ValueKind == JsonValueKind.String && (mayBeEmpty || !string.IsNullOrWhiteSpace(value.GetString()))) return value.GetString()!;
        Refuse("TaskFileNeedsText", place);
        return "";
    }

    private IReadOnlyList<JsonElement> List(JsonElement owner, string field, string place)
    {
        if (owner.TryGetProperty(field, out var list) && list.ValueKind == JsonValueKind.Array) return list.EnumerateArray().ToList();
        Refuse("TaskFileNeedsList", place);
        return [];
    }

    private void PassOver(JsonElement owner, string prefix, string[] known)
    {
        foreach (var field in owner.EnumerateObject().Where(f => !known.Contains(f.Name, StringComparer.Ordinal)))
        {
            _findings.Add(new Finding(FindingSeverity.Flagged, "TaskFileUnknownField", fileName, prefix + field.Name));
        }
    }

    private void Refuse(string key, params object[] arguments) =>
        _findings.Add(new Finding(FindingSeverity.Refused, key, [fileName, .. arguments]));
}
