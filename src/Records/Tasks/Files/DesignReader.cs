using System.Text.Json;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tasks.Files;

/// <summary>Reads the facts of a task, and its words where the same file holds them.</summary>
internal sealed class DesignReader(string fileName)
{
    private static readonly string[] TaskFields =
        ["format", "id", "pattern", "supports", "mats", "space", "prerequisites", "factors", "levels", "words"];
    private static readonly string[] FactorFields = ["key", "kind", "role", "unit", "range"];
    private static readonly string[] LevelFields = ["id", "dose", "at", "demands", "posture"];

    private readonly TaskJson _json = new(fileName);
    private readonly HashSet<Guid> _levelIds = [];

    public DesignReading Read(string text)
    {
        var design = _json.Read(text, DesignFile.Format, Design);
        foreach (var words in design?.Words.Values ?? []) NamesFit(_json, $"words.{words.Language}.", design!, words);
        return new DesignReading(fileName, _json.IsRefused ? null : design, _json.Findings);
    }

    /// <summary>Refuses words that do not name each level: a name would stand beside another level's dose.</summary>
    public static void NamesFit(TaskJson json, string prefix, TaskDesign design, TaskWords words)
    {
        if (words.Levels.Count != design.Levels.Count) json.Refuse("DesignLevelNames", prefix + "levels", words.Levels.Count, design.Levels.Count);
    }

    private TaskDesign? Design(JsonElement root)
    {
        if (!_json.HasFormat(root, DesignFile.Format)) return null;
        _json.PassOver(root, "", TaskFields);
        return new TaskDesign
        {
            Id = _json.Id(root, "id", "id"),
            Pattern = _json.Word<MovementPattern>(root, "pattern", "pattern"),
            Supports = [.. _json.List(root, "supports", "supports").Select((part, i) => _json.Word<SupportPart>(part, $"supports[{i}]"))],
            Mats = Mats(root),
            Space = Space(root),
            Prerequisites = root.TryGetProperty("prerequisites", out _)
                ? [.. _json.List(root, "prerequisites", "prerequisites").Select((id, i) => _json.Id(id, $"prerequisites[{i}]"))]
                : [],
            Factors = [.. _json.List(root, "factors", "factors").Select((factor, i) => Factor(factor, $"factors[{i}]")).OfType<TaskFactor>()],
            Levels = [.. _json.List(root, "levels", "levels").Select((level, i) => Level(level, $"levels[{i}]")).OfType<DesignedLevel>()],
            Words = root.TryGetProperty("words", out var words) && _json.IsObject(words, "words") ? Words(words) : new Dictionary<string, TaskWords>(),
        };
    }

    private MatNeed Mats(JsonElement root)
    {
        if (_json.Object(root, "mats", "mats") is not { } mats) return new MatNeed(0, MatShare.Pupil);
        _json.PassOver(mats, "mats.", ["count", "per"]);
        var count = _json.Number(mats, "count", "mats.count");
        if (count != decimal.Truncate(count) || count is < 0 or > DesignFile.MatCountMost) _json.Refuse("DesignMats", "mats.count", count, DesignFile.MatCountMost);
        return new MatNeed((int)Math.Clamp(count, 0, DesignFile.MatCountMost), _json.Word<MatShare>(mats, "per", "mats.per"));
    }

    private ClearSpace Space(JsonElement root)
    {
        if (_json.Object(root, "space", "space") is not { } space) return new ClearSpace(0, "");
        _json.PassOver(space, "space.", ["metres", "source"]);
        return new ClearSpace(_json.Number(space, "metres", "space.metres"), _json.Required(space, "source", "space.source"));
    }

    private TaskFactor? Factor(JsonElement factor, string place)
    {
        if (!_json.IsObject(factor, place)) return null;
        _json.PassOver(factor, place + ".", FactorFields);
        return new TaskFactor
        {
            Key = _json.Required(factor, "key", place + ".key"),
            Kind = _json.Word<FactorKind>(factor, "kind", place + ".kind"),
            Role = _json.Word<FactorRole>(factor, "role", place + ".role"),
            Unit = factor.TryGetProperty("unit", out var unit) ? _json.Word<FactorUnit>(unit, place + ".unit") : null,
            Range = [.. _json.List(factor, "range", place + ".range").Select((value, i) => Value(value, $"{place}.range[{i}]"))],
        };
    }

    private DesignedLevel? Level(JsonElement level, string place)
    {
        if (!_json.IsObject(level, place)) return null;
        _json.PassOver(level, place + ".", LevelFields);
        var id = _json.Id(level, "id", place + ".id");
        if (id != Guid.Empty && !_levelIds.Add(id)) _json.Refuse("TaskFileSameLevelId", place + ".id", id);
        var settings = new Dictionary<string, FactorValue>(StringComparer.Ordinal);
        if (level.TryGetProperty("at", out var at) && _json.IsObject(at, place + ".at"))
        {
            foreach (var setting in at.EnumerateObject()) settings[setting.Name] = Value(setting.Value, $"{place}.at.{setting.Name}");
        }
        return new DesignedLevel
        {
            Id = id,
            Dose = _json.Dose(level, place + ".dose"),
            Settings = settings,
            Demands = _json.Demands(level, place + ".demands"),
            Posture = level.TryGetProperty("posture", out var posture) ? _json.Text(posture, place + ".posture") : null,
        };
    }

    private FactorValue Value(JsonElement value, string place)
    {
        if (value.ValueKind == JsonValueKind.Number && value.TryGetDecimal(out var amount)) return FactorValue.Of(amount);
        if (value.ValueKind == JsonValueKind.String && !string.IsNullOrWhiteSpace(value.GetString())) return FactorValue.Of(value.GetString()!);
        _json.Refuse("DesignNeedsValue", place);
        return FactorValue.Of("");
    }

    private Dictionary<string, TaskWords> Words(JsonElement words)
    {
        var read = new Dictionary<string, TaskWords>(StringComparer.Ordinal);
        foreach (var language in words.EnumerateObject())
        {
            var place = "words." + language.Name;
            if (!DesignFile.IsLanguage(language.Name)) _json.Refuse("DesignLanguage", place, language.Name);
            else if (_json.IsObject(language.Value, place)) read[language.Name] = new WordsReader(_json, language.Name, place + ".").Words(language.Value);
        }
        return read;
    }
}
