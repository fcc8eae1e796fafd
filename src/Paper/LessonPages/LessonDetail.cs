namespace Slantwise.Paper.LessonPages;

/// <summary>How much the lesson page says. What is left out goes in one order, the least needed in the hall first; cautions never go.</summary>
internal sealed record LessonDetail
{
    private static readonly (string Words, Func<LessonDetail, LessonDetail> Shorter)[] Steps =
    [
        ("CutPatterns", d => d with { HasPatterns = false }),
        ("CutQuestions", d => d with { QuestionsPerTopicCount = 1 }),
        ("CutPhaseNotes", d => d with { HasPhaseNotes = false }),
        ("CutPurposes", d => d with { MostPurposeCount = 1 }),
        ("CutLines", d => d with { MostLineCount = 1 }),
        ("CutDebrief", d => d with { HasDebrief = false }),
        ("CutDemonstration", d => d with { HasDemonstration = false }),
        ("CutAllPurposes", d => d with { MostPurposeCount = 0 }),
        ("CutAllQuestions", d => d with { QuestionsPerTopicCount = 0 }),
        ("CutNotes", d => d with { NotesMm = 0 }),
        ("CutNames", d => d with { HasNames = false }),
        ("CutCues", d => d with { HasCues = false }),
        ("CutLevels", d => d with { HasLevels = false }),
        ("CutPhases", d => d with { HasPhaseList = false }),
    ];

    public bool HasPatterns { get; init; } = true;

    public int QuestionsPerTopicCount { get; init; } = 2;

    public bool HasPhaseNotes { get; init; } = true;

    public bool HasPhaseList { get; init; } = true;

    /// <summary>Lines a purpose may take.</summary>
    public int MostPurposeCount { get; init; } = int.MaxValue;

    /// <summary>Lines a level or a cue may take.</summary>
    public int MostLineCount { get; init; } = int.MaxValue;

    public bool HasDebrief { get; init; } = true;

    public bool HasDemonstration { get; init; } = true;

    public bool HasNames { get; init; } = true;

    public bool HasCues { get; init; } = true;

    public bool HasLevels { get; init; } = true;

    /// <summary>The least room for notes; 0 for none.</summary>
    public double NotesMm { get; init; } = 24;

    /// <summary>From everything to the least, each with the name of what it has left out beside the one before.</summary>
    public static IEnumerable<(LessonDetail Detail, string? Cut)> FromFull()
    {
        var detail = new LessonDetail();
        yield return (detail, null);
        foreach (var (words, shorter) in Steps) yield return (detail = shorter(detail), words);
    }

    /// <summary>Whether an earlier cut is part of a later one, which then says it all.</summary>
    public static bool IsPartOf(string earlier, string later) => (earlier, later) is
        ("CutQuestions", "CutAllQuestions") or ("CutPurposes", "CutAllPurposes") or ("CutPatterns", "CutDebrief") or ("CutPhaseNotes", "CutPhases");
}
