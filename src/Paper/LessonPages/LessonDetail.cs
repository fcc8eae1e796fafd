namespace Slantwise.Paper.LessonPages;

/// <summary>How much the lesson page says. What is left out goes in one order, the least needed in the hall first; cautions never go.</summary>
internal sealed record LessonDetail
{
    private static readonly (string Words, Func<LessonDetail, LessonDetail> Shorter)[] Steps =
    [
        ("CutQuestions", d => d with { QuestionsPerTopicCount = 1 }),
        ("CutSomeTaskQuestions", d => d with { MostErrorCount = 1 }),
        ("CutSomeNotes", d => d with { NotesMm = 14 }),
        ("CutPhaseNotes", d => d with { HasPhaseNotes = false }),
        ("CutPatterns", d => d with { HasPatterns = false }),
        ("CutPlan", d => d with { HasPlan = false }),
        ("CutPurposes", d => d with { MostPurposeCount = 1 }),
        ("CutLines", d => d with { MostLineCount = 1 }),
        ("CutDebrief", d => d with { HasDebrief = false }),
        ("CutDemonstration", d => d with { HasDemonstration = false }),
        ("CutAllPurposes", d => d with { MostPurposeCount = 0 }),
        ("CutAllQuestions", d => d with { QuestionsPerTopicCount = 0 }),
        ("CutNotes", d => d with { NotesMm = 0 }),
        ("CutTaskQuestions", d => d with { MostErrorCount = 0 }),
        ("CutNames", d => d with { HasNames = false }),
        ("CutPhases", d => d with { HasPhaseList = false }),
        ("CutAims", d => d with { HasAims = false }),
        ("CutLevels", d => d with { HasLevels = false }),
    ];

    public bool HasPatterns { get; init; } = true;

    public int QuestionsPerTopicCount { get; init; } = 2;

    /// <summary>How many of a task's errors are named, each with its question.</summary>
    public int MostErrorCount { get; init; } = 3;

    public bool HasAims { get; init; } = true;

    public bool HasPhaseNotes { get; init; } = true;

    /// <summary>Whether time and mats are there.</summary>
    public bool HasPlan { get; init; } = true;

    public bool HasPhaseList { get; init; } = true;

    /// <summary>Lines a purpose may take.</summary>
    public int MostPurposeCount { get; init; } = int.MaxValue;

    /// <summary>Lines a level or a cue may take.</summary>
    public int MostLineCount { get; init; } = int.MaxValue;

    public bool HasDebrief { get; init; } = true;

    public bool HasDemonstration { get; init; } = true;

    public bool HasNames { get; init; } = true;

    /// <summary>Whether levels and cues are there; beside each other, so one without the other would make no room.</summary>
    public bool HasLevels { get; init; } = true;

    /// <summary>The least room for notes; 0 for none.</summary>
    public double NotesMm { get; init; } = 24;

    /// <summary>The names of what can be left out, in the order in which it goes.</summary>
    public static IReadOnlyList<string> AllCuts { get; } = [.. Steps.Select(s => s.Words)];

    /// <summary>Everything but what was cut.</summary>
    public static LessonDetail Without(IEnumerable<string> cuts)
    {
        var gone = cuts.ToHashSet(StringComparer.Ordinal);
        return Steps.Where(s => gone.Contains(s.Words)).Aggregate(new LessonDetail(), (detail, step) => step.Shorter(detail));
    }

    /// <summary>What a page names of its cuts: those that another says already are passed over, and so is less room for notes, which shows.</summary>
    public static IEnumerable<string> Named(IReadOnlyList<string> cuts) =>
        cuts.Where(c => c != "CutSomeNotes" && !cuts.Any(later => IsPartOf(c, later)));

    private static bool IsPartOf(string cut, string other) => (cut, other) is
        ("CutQuestions", "CutAllQuestions") or ("CutSomeTaskQuestions", "CutTaskQuestions") or ("CutPurposes", "CutAllPurposes") or ("CutPatterns", "CutDebrief") or ("CutPhaseNotes", "CutPhases") or ("CutLines", "CutLevels");
}
