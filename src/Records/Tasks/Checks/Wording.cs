using System.Text.Json;
using System.Text.RegularExpressions;

namespace Slantwise.Records.Tasks.Checks;

/// <summary>What words a language's task texts keep to. Lists of our own, in <c>content/LANGUAGE/wording.json</c>.</summary>
public sealed class Wording
{
    private static readonly Lazy<IReadOnlyDictionary<string, Wording>> All = new(() => typeof(Wording).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith("content/", StringComparison.Ordinal) && name.EndsWith("/wording.json", StringComparison.Ordinal))
        .ToDictionary(name => name.Split('/')[1], Load, StringComparer.Ordinal));

    /// <summary>Words of a cue, at most.</summary>
    public required int CueWordCount { get; init; }

    /// <summary>Words that name nothing a pupil could do, feel or see, each with why.</summary>
    public required IReadOnlyDictionary<string, string> Vague { get; init; }

    /// <summary>Words that say what not to do.</summary>
    public required IReadOnlyList<string> Negative { get; init; }

    /// <summary>Words for what goes on inside a head, where nobody can check it.</summary>
    public required IReadOnlyList<string> Hidden { get; init; }

    /// <summary>What makes a question open: one of these words is in it.</summary>
    public required IReadOnlyList<string> Open { get; init; }

    /// <summary>Words that give a level or a direction between levels.</summary>
    public required IReadOnlyList<string> LevelWords { get; init; }

    /// <summary>Words that give an answer or an order.</summary>
    public required IReadOnlyList<string> Telling { get; init; }

    /// <summary>Names of diagnoses; a task is changed by function.</summary>
    public required IReadOnlyList<string> Diagnoses { get; init; }

    /// <summary>The words of a language; none where the program has no list for it, and then no word is looked for.</summary>
    /// <param name="language">Two letters.</param>
    public static Wording? Of(string language) => All.Value.GetValueOrDefault(language);

    /// <summary>The first of the words that a text has, as whole words, whatever their case.</summary>
    internal static string? FirstIn(string text, IEnumerable<string> words) => words.FirstOrDefault(word =>
        Regex.IsMatch(text, $@"(?<!\w){Regex.Escape(word)}(?!\w)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant));

    private static Wording Load(string resource)
    {
        using var stream = typeof(Wording).Assembly.GetManifestResourceStream(resource)!;
        return JsonSerializer.Deserialize<Wording>(stream, JsonSerializerOptions.Web)!;
    }
}
