using System.Text.RegularExpressions;
using Slantwise.Records.Checks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Checks;

/// <summary>What many tasks keep to beside each other: ids, prerequisites, languages.</summary>
internal static partial class LibraryRules
{
    public static void Add(List<Finding> findings, IReadOnlyList<DesignReading> readings)
    {
        AddIds(findings, readings);
        var byId = new Dictionary<Guid, TaskDesign>();
        foreach (var design in readings.Select(r => r.Design!)) byId.TryAdd(design.Id, design);
        var languages = readings.SelectMany(r => r.Design!.Words.Keys).Distinct().Order(StringComparer.Ordinal).ToList();
        foreach (var reading in readings)
        {
            AddPrerequisites(new PartFindings(findings, reading.FileName), reading.Design!, byId);
            AddLanguages(findings, reading, languages);
        }
    }

    private static void AddIds(List<Finding> findings, IReadOnlyList<DesignReading> readings)
    {
        var owners = new Dictionary<Guid, string>();
        foreach (var reading in readings)
        {
            var said = new PartFindings(findings, reading.FileName);
            var ids = reading.Design!.Levels.Select((level, i) => (Part: $"levels[{i}].id", level.Id)).Prepend((Part: "id", reading.Design.Id));
            foreach (var (part, id) in ids)
            {
                if (!owners.TryAdd(id, $"{reading.FileName}, {part}")) said.Refuse("DesignIdTwice", part, id, owners[id]);
            }
        }
    }

    private static void AddPrerequisites(PartFindings said, TaskDesign design, Dictionary<Guid, TaskDesign> byId)
    {
        for (var i = 0; i < design.Prerequisites.Count; i++)
        {
            var part = $"prerequisites[{i}]";
            if (!byId.ContainsKey(design.Prerequisites[i])) said.Refuse("DesignPrerequisiteUnknown", part, design.Prerequisites[i]);
            else if (Reaches(design.Prerequisites[i], design.Id, byId, [])) said.Refuse("DesignPrerequisiteLoops", part, design.Prerequisites[i]);
        }
    }

    private static bool Reaches(Guid from, Guid to, Dictionary<Guid, TaskDesign> byId, HashSet<Guid> seen) =>
        from == to || (seen.Add(from) && byId.TryGetValue(from, out var design) && design.Prerequisites.Any(next => Reaches(next, to, byId, seen)));

    private static void AddLanguages(List<Finding> findings, DesignReading reading, IReadOnlyList<string> languages)
    {
        var words = reading.Design!.Words;
        var first = words.Values.FirstOrDefault(w => w.Language == "en") ?? words.Values.FirstOrDefault();
        if (first is null)
        {
            findings.Add(Finding.Refused("DesignWithoutWords", reading.FileName, "words"));
            return;
        }
        foreach (var language in languages)
        {
            if (!words.TryGetValue(language, out var other))
            {
                new PartFindings(findings, reading.FileName).Flag("DesignLanguageMissing", "words." + language, language, string.Join(", ", languages));
                continue;
            }
            var (file, prefix) = reading.PlaceOf(language);
            var said = new PartFindings(findings, file, prefix);
            if (other.Cues.Count != first.Cues.Count) said.Flag("DesignPartsDiffer", "cues", first.Language, first.Cues.Count, other.Cues.Count);
            if (other.Errors.Count != first.Errors.Count) said.Flag("DesignPartsDiffer", "errors", first.Language, first.Errors.Count, other.Errors.Count);
            if (other.Caution.Length == 0 != (first.Caution.Length == 0)) said.Flag("DesignPartMissing", "caution", first.Language);
            foreach (var (part, one, theirs) in Numbered(first).Zip(Numbered(other), (a, b) => (b.Part, Numbers(a.Text), Numbers(b.Text))).Where(p => p.Item2 != p.Item3))
            {
                said.Flag("DesignNumbersDiffer", part, first.Language, one, theirs);
            }
            foreach (var lacking in first.Adaptations.ExceptBy(other.Adaptations.Select(Key), Key).Select(Key)) said.Flag("DesignPartMissing", lacking, first.Language);
            foreach (var extra in other.Adaptations.ExceptBy(first.Adaptations.Select(Key), Key).Select(Key)) said.Flag("DesignPartExtra", extra, first.Language);
        }
    }

    private static IEnumerable<(string Part, string Text)> Numbered(TaskWords words) =>
        [.. words.Levels.Select((level, i) => ($"levels[{i}]", level)), ("caution", words.Caution), .. words.Cues.Select((cue, i) => ($"cues[{i}]", cue))];

    // 1.5 and 1,5 are one number; the order may differ where a sentence is turned round.
    private static string Numbers(string text) =>
        string.Join(" ", Number().Matches(text).Select(m => m.Value.Replace(',', '.')).Order(StringComparer.Ordinal));

    [GeneratedRegex(@"[0-9]+(?:[.,][0-9]+)?")]
    private static partial Regex Number();

    private static string Key(Adaptation change) => $"adaptations.{TaskFileWords.Of(change.Step)}.{TaskFileWords.Of(change.Need)}";
}
