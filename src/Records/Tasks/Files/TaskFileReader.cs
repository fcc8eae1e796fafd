using System.Text.Json;

namespace Slantwise.Records.Tasks.Files;

/// <summary>Reads one task file of the first format.</summary>
internal sealed class TaskFileReader(string fileName, Guid schoolId)
{
    private static readonly string[] TaskFields = ["format", "id", "name", "purpose", "cues", "caution", "levels"];
    private static readonly string[] LevelFields = ["id", "name", "dose", "demands", "posture"];

    private readonly TaskJson _json = new(fileName);
    private readonly HashSet<Guid> _levelIds = [];

    public TaskReading Read(string text)
    {
        var task = _json.Read(text, TaskFile.Format, Task);
        return new TaskReading(fileName, _json.IsRefused ? null : task, _json.Findings);
    }

    private MovementTask? Task(JsonElement root)
    {
        if (!_json.HasFormat(root, TaskFile.Format, DesignFile.Format)) return null;
        _json.PassOver(root, "", TaskFields);
        return new MovementTask
        {
            SchoolId = schoolId,
            Id = _json.Id(root, "id", "id"),
            Name = _json.Required(root, "name", "name"),
            Purpose = _json.Optional(root, "purpose", "purpose"),
            Cues = _json.Texts(root, "cues", "cues"),
            Caution = _json.Optional(root, "caution", "caution"),
            Levels = _json.List(root, "levels", "levels").Select((level, i) => Level(level, $"levels[{i}]")).OfType<Level>().ToList(),
        };
    }

    private Level? Level(JsonElement level, string place)
    {
        if (!_json.IsObject(level, place)) return null;
        _json.PassOver(level, place + ".", LevelFields);
        var id = _json.Id(level, "id", place + ".id");
        if (id != Guid.Empty && !_levelIds.Add(id)) _json.Refuse("TaskFileSameLevelId", place + ".id", id);
        return new Level
        {
            Id = id,
            Name = _json.Required(level, "name", place + ".name"),
            Dose = _json.Dose(level, place + ".dose"),
            Demands = _json.Demands(level, place + ".demands"),
            Posture = level.TryGetProperty("posture", out var posture) ? _json.Text(posture, place + ".posture") : null,
        };
    }
}
