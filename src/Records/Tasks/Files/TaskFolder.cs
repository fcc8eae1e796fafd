using System.Text.RegularExpressions;
using Slantwise.Records.Checks;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tasks.Files;

/// <summary>A folder of tasks: facts in <c>tasks/KEY.json</c> and words in <c>LANGUAGE/tasks/KEY.json</c>, or whole tasks as single files.</summary>
public static partial class TaskFolder
{
    /// <summary>Reads every task of a folder.</summary>
    /// <param name="texts">The files' texts by their path in the folder, with slashes. Files that are neither are left alone.</param>
    /// <returns>A reading for each task, by path; words without a task are a reading of their own with a finding.</returns>
    public static IReadOnlyList<DesignReading> Read(IReadOnlyDictionary<string, string> texts)
    {
        var words = texts.Keys.Select(path => (Path: path, Match: WordsPath().Match(path))).Where(w => w.Match.Success)
            .ToLookup(w => w.Match.Groups["key"].Value, w => (w.Path, Language: w.Match.Groups["language"].Value), StringComparer.Ordinal);
        var readings = new List<DesignReading>();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        foreach (var path in texts.Keys.Order(StringComparer.Ordinal).Where(p => FactsPath().IsMatch(p)))
        {
            var key = Path.GetFileNameWithoutExtension(path);
            keys.Add(key);
            readings.Add(WithWords(DesignFile.Read(path, texts[path]), words[key].OrderBy(w => w.Language, StringComparer.Ordinal), texts));
        }
        foreach (var lost in words.Where(w => !keys.Contains(w.Key)).SelectMany(w => w))
        {
            readings.Add(new DesignReading(lost.Path, null, [Finding.Refused("DesignWordsWithoutFacts", lost.Path, "tasks/" + Path.GetFileName(lost.Path))]));
        }
        return readings;
    }

    private static DesignReading WithWords(DesignReading facts, IEnumerable<(string Path, string Language)> files, IReadOnlyDictionary<string, string> texts)
    {
        var findings = facts.Findings.ToList();
        var words = new Dictionary<string, TaskWords>(facts.Design?.Words ?? new Dictionary<string, TaskWords>(), StringComparer.Ordinal);
        var wordsFiles = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (path, language) in files)
        {
            var json = new TaskJson(path);
            if (new WordsReader(json, language, "").Read(texts[path]) is { } read)
            {
                words[language] = read;
                if (facts.Design is { } design) DesignReader.NamesFit(json, "", design, read);
            }
            wordsFiles[language] = path;
            findings.AddRange(json.Findings);
        }
        var isRefused = findings.Any(f => f.IsRefused);
        return new DesignReading(facts.FileName, isRefused || facts.Design is null ? null : facts.Design with { Words = words }, findings) { WordsFiles = wordsFiles };
    }

    [GeneratedRegex(@"^(?<language>[a-z]{2})/tasks/(?<key>[^/]+)\.json$")]
    private static partial Regex WordsPath();

    // Beside the library's own folder, single files at the top: what a colleague has sent.
    [GeneratedRegex(@"^(tasks/)?[^/]+\.json$")]
    private static partial Regex FactsPath();
}
