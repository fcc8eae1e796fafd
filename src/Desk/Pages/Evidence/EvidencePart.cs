using System.Globalization;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;
using Slantwise.Records.Evidence.Levels;
using Slantwise.Records.Evidence.Orders;
using Slantwise.Records.Evidence.SelfChecks;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>The name of a number that pools a class's entries, so that an address can lead to them.</summary>
/// <param name="Kind">Which kind of number.</param>
/// <param name="TaskNumber">The task, from 1; 0 where no task is meant.</param>
/// <param name="Place">Its place in the evidence's list, from 0; of self-checks the cue's number, of moves and talks the lesson's, from 1.</param>
public readonly record struct EvidencePart(EvidencePartKind Kind, int TaskNumber = 0, int Place = 0)
{
    // A sheet has 5 cues at most; all sheets of a unit together have far fewer than this.
    private const int CuePlaces = 100;

    /// <summary>The name as a short text: "Level-1-2".</summary>
    public string Key => string.Create(CultureInfo.InvariantCulture, $"{Kind}-{TaskNumber}-{Place}");

    /// <summary>The name of a cue in the sets at a level.</summary>
    /// <param name="taskNumber">The task, from 1.</param>
    /// <param name="levelPlace">The level's place in the task's evidence, from 0.</param>
    /// <param name="cueNumber">The cue, from 1 to 100.</param>
    public static EvidencePart LevelCue(int taskNumber, int levelPlace, int cueNumber) =>
        new(EvidencePartKind.LevelCue, taskNumber, levelPlace * CuePlaces + cueNumber - 1);

    /// <summary>Reads a name back.</summary>
    /// <param name="key">Any text.</param>
    /// <returns>None for a text that <see cref="Key"/> never makes.</returns>
    public static EvidencePart? FromKey(string? key)
    {
        var parts = (key ?? "").Split('-');
        if (parts.Length != 3
            || !Enum.TryParse<EvidencePartKind>(parts[0], out var kind)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var task)
            || !int.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out var place)) return null;
        var part = new EvidencePart(kind, task, place);
        return part.Key == key ? part : null;
    }

    /// <summary>The entries behind the number.</summary>
    /// <param name="evidence">The evidence it is a number of.</param>
    /// <returns>Empty where the evidence has no such number.</returns>
    public IReadOnlyList<Guid> EntryIds(EvidenceView evidence)
    {
        var (number, place) = (TaskNumber, Place);
        var task = evidence.Tasks.FirstOrDefault(t => t.TaskNumber == number);
        return Kind switch
        {
            EvidencePartKind.Level => task?.Levels.ElementAtOrDefault(place)?.EntryIds ?? [],
            EvidencePartKind.Cue => task?.Cues.ElementAtOrDefault(place)?.EntryIds ?? [],
            EvidencePartKind.After => evidence.Class.DecisionsAfter.ElementAtOrDefault(place)?.EntryIds ?? [],
            EvidencePartKind.Predictions => (number == 0 ? evidence.Class.Predictions : task?.Predictions)?.EntryIds ?? [],
            EvidencePartKind.SelfCheck => SelfChecked(evidence, number, place),
            EvidencePartKind.LevelDecisions => task?.Levels.ElementAtOrDefault(place) is { } level
                ? LevelDecisions.Of(ClassLevels.SetsAt(evidence.Pupils, task, level.LevelId)).EntryIds
                : [],
            EvidencePartKind.LevelCue => task?.Levels.ElementAtOrDefault(place / CuePlaces) is { LevelId: { } levelId }
                ? ClassLevels.CuesAt(evidence.Pupils, task, levelId).ElementAtOrDefault(place % CuePlaces)?.EntryIds ?? []
                : [],
            EvidencePartKind.Uncounted => evidence.UncountedEntryIds,
            EvidencePartKind.Moves => place == 0 || LessonOf(evidence, place) is not null ? LevelMoves.Of(evidence.Pupils, LessonOf(evidence, place)).EntryIds : [],
            EvidencePartKind.Order => TaskOrder.Of(evidence.Pupils, evidence.Tasks, null).FirstOrDefault(o => o.TaskNumber == number)?.Pairs.ElementAtOrDefault(place)?.EntryIds ?? [],
            EvidencePartKind.Pattern => DecisionsOf(evidence).Patterns.FirstOrDefault(p => (int)p.Pattern == place)?.EntryIds ?? [],
            EvidencePartKind.Stays => LongStays.Of(evidence.Pupils).EntryIds,
            EvidencePartKind.Visits => [.. evidence.Pupils.SelectMany(p => p.Visits).Where(v => place == 0 || v.LessonId == LessonOf(evidence, place)).Select(v => v.EntryId)],
            EvidencePartKind.LevelTalk => evidence.Class.LevelTalk.EntryIdsToReread,
            EvidencePartKind.Observers => evidence.Observers?.EntryIds ?? [],
            _ => [],
        };
    }

    internal static DecisionEvidence DecisionsOf(EvidenceView evidence) =>
        DecisionEvidence.Of(evidence.Pupils.SelectMany(p => p.Tasks).SelectMany(t => t.Sets));

    private static Guid? LessonOf(EvidenceView evidence, int lessonNumber) => evidence.Lessons.FirstOrDefault(l => l.LessonNumber == lessonNumber)?.LessonId;

    private static IReadOnlyList<Guid> SelfChecked(EvidenceView evidence, int taskNumber, int cueNumber)
    {
        var checks = ClassSelfChecks.Of(evidence.Pupils, evidence.Tasks);
        return (taskNumber == 0 ? checks.Whole : checks.Cues.FirstOrDefault(c => c.TaskNumber == taskNumber && c.CueNumber == cueNumber))?.EntryIds ?? [];
    }
}
