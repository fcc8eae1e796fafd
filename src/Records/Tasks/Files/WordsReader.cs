using System.Text.Json;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tasks.Files;

/// <summary>Reads a task's words in one language, from a file of their own or from within a task's file.</summary>
/// <param name="json">Collects what there is to say.</param>
/// <param name="language">The language of the words.</param>
/// <param name="prefix">What leads a place: empty in a file of their own.</param>
internal sealed class WordsReader(TaskJson json, string language, string prefix)
{
    private static readonly string[] Fields = ["format", "name", "purpose", "cues", "caution", "levels", "factors", "errors", "adaptations"];

    public TaskWords? Read(string text)
    {
        var words = json.Read(text, DesignFile.WordsFormat, root => json.HasFormat(root, DesignFile.WordsFormat) ? Words(root) : null);
        return json.IsRefused ? null : words;
    }

    public TaskWords Words(JsonElement root)
    {
        json.PassOver(root, prefix, Fields);
        return new TaskWords
        {
            Language = language,
            Name = json.Required(root, "name", prefix + "name"),
            Purpose = json.Optional(root, "purpose", prefix + "purpose"),
            Cues = json.Texts(root, "cues", prefix + "cues"),
            Caution = json.Optional(root, "caution", prefix + "caution"),
            Levels = json.Texts(root, "levels", prefix + "levels"),
            Factors = json.Object(root, "factors", prefix + "factors") is { } factors ? Factors(factors) : new Dictionary<string, FactorWords>(),
            Errors = [.. json.List(root, "errors", prefix + "errors").Select((error, i) => Error(error, $"{prefix}errors[{i}]")).OfType<MovementError>()],
            Adaptations = json.Object(root, "adaptations", prefix + "adaptations") is { } steps ? Adaptations(steps) : [],
        };
    }

    private Dictionary<string, FactorWords> Factors(JsonElement factors)
    {
        var read = new Dictionary<string, FactorWords>(StringComparer.Ordinal);
        foreach (var factor in factors.EnumerateObject())
        {
            var place = prefix + "factors." + factor.Name;
            if (!json.IsObject(factor.Value, place)) continue;
            json.PassOver(factor.Value, place + ".", ["name", "values"]);
            var values = new Dictionary<string, string>(StringComparer.Ordinal);
            if (factor.Value.TryGetProperty("values", out var named) && json.IsObject(named, place + ".values"))
            {
                foreach (var value in named.EnumerateObject()) values[value.Name] = json.Text(value.Value, $"{place}.values.{value.Name}");
            }
            read[factor.Name] = new FactorWords(json.Required(factor.Value, "name", place + ".name"), values);
        }
        return read;
    }

    private MovementError? Error(JsonElement error, string place)
    {
        if (!json.IsObject(error, place)) return null;
        json.PassOver(error, place + ".", ["seen", "cause", "question"]);
        return new MovementError(
            json.Required(error, "seen", place + ".seen"), json.Required(error, "cause", place + ".cause"), json.Required(error, "question", place + ".question"));
    }

    // By step and then by need: both are keys, so that a sentence says only the change.
    private List<Adaptation> Adaptations(JsonElement steps)
    {
        var read = new List<Adaptation>();
        var letters = TaskFileWords.All<StepLetter>();
        var needs = TaskFileWords.All<FunctionNeed>();
        foreach (var step in steps.EnumerateObject())
        {
            var place = prefix + "adaptations." + step.Name;
            if (!letters.TryGetValue(step.Name, out var letter)) json.Refuse("TaskFileUnknownWord", place, step.Name, string.Join(", ", letters.Keys));
            else if (json.IsObject(step.Value, place))
            {
                foreach (var change in step.Value.EnumerateObject())
                {
                    if (needs.TryGetValue(change.Name, out var need)) read.Add(new Adaptation(letter, need, json.Text(change.Value, place + "." + change.Name)));
                    else json.Refuse("TaskFileUnknownWord", place, change.Name, string.Join(", ", needs.Keys));
                }
            }
        }
        return [.. read.OrderBy(a => a.Step)];
    }
}
