using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tasks.Files;

/// <summary>Writes the parts of a task as JSON.</summary>
internal static class DesignWriter
{
    private static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,
        NewLine = "\n",
        // Names and cues are read by people: é stays é.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    public static string Text(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Readable)) write(json);
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    public static void Facts(Utf8JsonWriter json, TaskDesign design, bool withWords)
    {
        json.WriteStartObject();
        json.WriteString("format", DesignFile.Format);
        json.WriteString("id", design.Id);
        json.WriteString("pattern", TaskFileWords.Of(design.Pattern));
        Strings(json, "supports", design.Supports.Select(TaskFileWords.Of));
        json.WriteStartObject("mats");
        json.WriteNumber("count", design.Mats.MatCount);
        json.WriteString("per", TaskFileWords.Of(design.Mats.Per));
        json.WriteEndObject();
        json.WriteStartObject("space");
        json.WriteNumber("metres", design.Space.SpaceM);
        json.WriteString("source", design.Space.Source);
        json.WriteEndObject();
        Strings(json, "prerequisites", design.Prerequisites.Select(id => id.ToString()));
        json.WriteStartArray("factors");
        foreach (var factor in design.Factors) Factor(json, factor);
        json.WriteEndArray();
        json.WriteStartArray("levels");
        foreach (var level in design.Levels) Level(json, level);
        json.WriteEndArray();
        if (withWords)
        {
            json.WriteStartObject("words");
            foreach (var (language, words) in design.Words.OrderBy(w => w.Key, StringComparer.Ordinal))
            {
                json.WriteStartObject(language);
                Words(json, words);
                json.WriteEndObject();
            }
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }

    public static void Words(Utf8JsonWriter json, TaskWords words)
    {
        json.WriteString("name", words.Name);
        json.WriteString("purpose", words.Purpose);
        Strings(json, "cues", words.Cues);
        json.WriteString("caution", words.Caution);
        Strings(json, "levels", words.Levels);
        json.WriteStartObject("factors");
        foreach (var (key, factor) in words.Factors)
        {
            json.WriteStartObject(key);
            json.WriteString("name", factor.Name);
            if (factor.Values.Count > 0)
            {
                json.WriteStartObject("values");
                foreach (var (value, meaning) in factor.Values) json.WriteString(value, meaning);
                json.WriteEndObject();
            }
            json.WriteEndObject();
        }
        json.WriteEndObject();
        json.WriteStartArray("errors");
        foreach (var error in words.Errors)
        {
            json.WriteStartObject();
            json.WriteString("seen", error.Seen);
            json.WriteString("cause", error.Cause);
            json.WriteString("question", error.Question);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartObject("adaptations");
        foreach (var step in words.Adaptations.GroupBy(a => a.Step).OrderBy(s => s.Key))
        {
            json.WriteStartObject(TaskFileWords.Of(step.Key));
            foreach (var change in step) json.WriteString(TaskFileWords.Of(change.Need), change.Change);
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }

    private static void Factor(Utf8JsonWriter json, TaskFactor factor)
    {
        json.WriteStartObject();
        json.WriteString("key", factor.Key);
        json.WriteString("kind", TaskFileWords.Of(factor.Kind));
        json.WriteString("role", TaskFileWords.Of(factor.Role));
        if (factor.Unit is { } unit) json.WriteString("unit", TaskFileWords.Of(unit));
        json.WriteStartArray("range");
        foreach (var value in factor.Range)
        {
            if (value.Amount is { } amount) json.WriteNumberValue(amount);
            else json.WriteStringValue(value.Key);
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Level(Utf8JsonWriter json, DesignedLevel level)
    {
        json.WriteStartObject();
        json.WriteString("id", level.Id);
        json.WriteStartObject("dose");
        json.WriteNumber(TaskFileWords.Of(level.Dose.Kind), level.Dose.Amount);
        json.WriteEndObject();
        json.WriteStartObject("at");
        foreach (var (key, value) in level.Settings)
        {
            if (value.Amount is { } amount) json.WriteNumber(key, amount);
            else json.WriteString(key, value.Key);
        }
        json.WriteEndObject();
        Strings(json, "demands", level.Demands.Select(TaskFileWords.Of));
        if (level.Posture is { } posture) json.WriteString("posture", posture);
        json.WriteEndObject();
    }

    private static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    }
}
