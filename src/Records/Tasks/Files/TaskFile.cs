using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace Slantwise.Records.Tasks.Files;

/// <summary>A movement task in the first, short form of a JSON file that a teacher can read and change; <see cref="DesignFile"/> is the whole form.</summary>
/// <remarks>
/// One object: <c>format</c>, <c>id</c>, <c>name</c>, <c>purpose</c>, <c>cues</c>, <c>caution</c> and <c>levels</c>; each level has an
/// <c>id</c>, a <c>name</c>, one <c>dose</c> such as <c>{"holdS": 5}</c> a list of <c>demands</c> and, where it is
/// held still, the key of a <c>posture</c> of the library. Comments and a comma too many are passed over,
/// and so are fields this version does not know, with a finding.
/// </remarks>
public static class TaskFile
{
    /// <summary>The format that is written here.</summary>
    public const string Format = "slantwise-task/1";

    private static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,
        NewLine = "\n",
        // Names and cues are read by people: é stays é.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    /// <summary>Reads a task.</summary>
    /// <param name="fileName">What findings call the file.</param>
    /// <param name="text">Its whole text, of this format or of <see cref="DesignFile.Format"/> with its words inside.</param>
    /// <param name="schoolId">The school that will own the task.</param>
    /// <param name="language">The language to take of a file that holds several, two letters; English where it lacks it.</param>
    /// <returns>The task, or none and at least one finding that refuses the file and says where.</returns>
    public static TaskReading Read(string fileName, string text, Guid schoolId, string language = "en")
    {
        if (TaskJson.FormatOf(text) != DesignFile.Format) return new TaskFileReader(fileName, schoolId).Read(text);
        var reading = DesignFile.Read(fileName, text);
        return reading.Design is { Words.Count: 0 }
            ? new TaskReading(fileName, null, [.. reading.Findings, Records.Checks.Finding.Refused("DesignWithoutWords", fileName, "words")])
            : new TaskReading(fileName, reading.Design?.ToTask(language, schoolId), reading.Findings);
    }

    /// <summary>Writes a task.</summary>
    /// <param name="task">Any task; its school is not written.</param>
    /// <returns>The file's text, ending in a line feed. Reading it gives the same task.</returns>
    public static string Write(MovementTask task)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Readable))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteString("id", task.Id);
            json.WriteString("name", task.Name);
            json.WriteString("purpose", task.Purpose);
            json.WriteStartArray("cues");
            foreach (var cue in task.Cues) json.WriteStringValue(cue);
            json.WriteEndArray();
            json.WriteString("caution", task.Caution);
            json.WriteStartArray("levels");
            foreach (var level in task.Levels) Write(json, level);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return System.Text.Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Level level)
    {
        json.WriteStartObject();
        json.WriteString("id", level.Id);
        json.WriteString("name", level.Name);
        json.WriteStartObject("dose");
        json.WriteNumber(TaskFileWords.Of(level.Dose.Kind), level.Dose.Amount);
        json.WriteEndObject();
        json.WriteStartArray("demands");
        foreach (var demand in level.Demands) json.WriteStringValue(TaskFileWords.Of(demand));
        json.WriteEndArray();
        if (level.Posture is { } posture) json.WriteString("posture", posture);
        json.WriteEndObject();
    }
}
