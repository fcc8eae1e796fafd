using Slantwise.Records.Checks;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Checks;

/// <summary>What the words of a task keep to, in one language.</summary>
internal static class WordsRules
{
    public const int CueCountLeast = 3;
    public const int ErrorCountLeast = 2;

    public static void Add(PartFindings said, TaskDesign design, TaskWords words)
    {
        var wording = Wording.Of(words.Language);
        AddLengths(said, words);
        AddCues(said, words.Cues, wording);
        if (SentenceCount(words.Purpose) != 1) said.Flag("DesignOneSentence", "purpose");
        if (words.Caution.Length == 0 && design.Needs.Count > 0) said.Flag("DesignCaution", "caution", string.Join(", ", design.Needs.Select(TaskFileWords.Of)));
        AddLevelNames(said, design, words);
        AddFactors(said, design, words);
        if (words.Errors.Count < ErrorCountLeast) said.Flag("DesignErrors", "errors", words.Errors.Count, ErrorCountLeast);
        for (var i = 0; i < words.Errors.Count; i++) QuestionRules.Add(said, $"errors[{i}].question", words.Errors[i].Question, wording);
        AddAdaptations(said, words, wording);
        if (wording is not null) AddVague(said, words, wording);
    }

    private static void AddLengths(PartFindings said, TaskWords words)
    {
        if (words.Name.Length > Limits.NameLength) said.Flag("DesignTooLong", "name", words.Name.Length, Limits.NameLength);
        foreach (var (part, text) in Sentences(words).Where(s => s.Text.Length > Limits.SentenceLength))
        {
            said.Flag("DesignTooLong", part, text.Length, Limits.SentenceLength);
        }
    }

    private static void AddCues(PartFindings said, IReadOnlyList<string> cues, Wording? wording)
    {
        if (cues.Count is < CueCountLeast or > Limits.CueCount) said.Flag("DesignCueCount", "cues", cues.Count, CueCountLeast, Limits.CueCount);
        for (var i = 0; i < cues.Count; i++)
        {
            var (cue, place) = (cues[i], $"cues[{i}]");
            if (cue.Length > Limits.CueLength) said.Flag("DesignTooLong", place, cue.Length, Limits.CueLength);
            if (cues.Take(i).Any(other => Alike.Texts(other, cue))) said.Flag("DesignCueTwice", place);
            if (wording is null) continue;
            if (WordCount(cue) > wording.CueWordCount) said.Flag("DesignCueWords", place, WordCount(cue), wording.CueWordCount);
            if (Wording.FirstIn(cue, wording.Negative) is { } no) said.Flag("DesignCueNegative", place, no);
            if (Wording.FirstIn(cue, wording.Hidden) is { } hidden) said.Flag("DesignCueHidden", place, hidden);
        }
    }

    private static void AddLevelNames(PartFindings said, TaskDesign design, TaskWords words)
    {
        for (var i = 0; i < words.Levels.Count; i++)
        {
            if (words.Levels[i].Length > Limits.NameLength) said.Flag("DesignTooLong", $"levels[{i}]", words.Levels[i].Length, Limits.NameLength);
            for (var before = 0; before < i; before++)
            {
                if (Alike.Texts(words.Levels[before], words.Levels[i]) && design.Levels[before].Dose == design.Levels[i].Dose)
                {
                    said.Refuse("DesignLevelsAlike", $"levels[{i}]", before + 1, i + 1);
                }
            }
        }
    }

    private static void AddFactors(PartFindings said, TaskDesign design, TaskWords words)
    {
        foreach (var factor in design.Factors.Where(f => f.Dose is null))
        {
            var place = "factors." + factor.Key;
            if (!words.Factors.TryGetValue(factor.Key, out var named)) said.Flag("DesignFactorWords", place);
            else
            {
                foreach (var value in factor.Range.Where(v => v.Amount is null && !named.Values.ContainsKey(v.Key))) said.Flag("DesignFactorWords", $"{place}.values.{value.Key}");
                foreach (var value in named.Values.Keys.Except(factor.Range.Select(v => v.Key))) said.Flag("DesignWordsTooMuch", $"{place}.values.{value}", string.Join(", ", factor.Range));
            }
        }
        var known = design.Factors.Where(f => f.Dose is null).Select(f => f.Key).ToList();
        foreach (var key in words.Factors.Keys.Except(known)) said.Flag("DesignWordsTooMuch", "factors." + key, string.Join(", ", known));
    }

    private static void AddAdaptations(PartFindings said, TaskWords words, Wording? wording)
    {
        foreach (var step in Enum.GetValues<StepLetter>().Except(words.Adaptations.Select(a => a.Step)))
        {
            said.Flag("DesignStep", "adaptations." + TaskFileWords.Of(step), string.Join(", ", TaskFileWords.All<FunctionNeed>().Keys));
        }
        foreach (var change in words.Adaptations)
        {
            var place = $"adaptations.{TaskFileWords.Of(change.Step)}.{TaskFileWords.Of(change.Need)}";
            if (SentenceCount(change.Change) != 1) said.Flag("DesignOneSentence", place);
            if (wording is not null && Wording.FirstIn(change.Change, wording.Diagnoses) is { } diagnosis) said.Flag("DesignDiagnosis", place, diagnosis);
        }
    }

    private static void AddVague(PartFindings said, TaskWords words, Wording wording)
    {
        var everything = Sentences(words)
            .Concat(words.Cues.Select((cue, i) => (Part: $"cues[{i}]", Text: cue)))
            .Concat(words.Levels.Select((level, i) => (Part: $"levels[{i}]", Text: level)));
        foreach (var (part, text) in everything)
        {
            if (Wording.FirstIn(text, wording.Vague.Keys) is { } vague) said.Flag("DesignVague", part, vague, wording.Vague[vague]);
        }
    }

    private static IEnumerable<(string Part, string Text)> Sentences(TaskWords words) =>
    [
        ("purpose", words.Purpose), ("caution", words.Caution),
        .. words.Errors.SelectMany((e, i) => new[] { ($"errors[{i}].seen", e.Seen), ($"errors[{i}].cause", e.Cause), ($"errors[{i}].question", e.Question) }),
        .. words.Adaptations.Select(a => ($"adaptations.{TaskFileWords.Of(a.Step)}.{TaskFileWords.Of(a.Need)}", a.Change)),
    ];

    internal static int WordCount(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(char.IsLetterOrDigit));

    // A point within a number (0.5) ends nothing.
    private static int SentenceCount(string text) => text.Where((c, i) => c is '.' or '!' or '?' && (i + 1 == text.Length || char.IsWhiteSpace(text[i + 1]))).Count();
}
