namespace Slantwise.Records.Evidence.Growth;

/// <summary>How many pupils ended at another level than they began with, and which way on the sheet. Neither way is better.</summary>
/// <param name="HarderCount">Pupils who ended harder in a task, and in none easier.</param>
/// <param name="EasierCount">Pupils who ended easier in a task, and in none harder.</param>
/// <param name="BothCount">Pupils who ended harder in one task and easier in another.</param>
/// <param name="StayedCount">Pupils who ended in each task where they began.</param>
/// <param name="ExploredCount">Of all of them, pupils who chose at least two levels of a task, also where they came back.</param>
/// <param name="EntryIds">The choices behind it.</param>
/// <remarks>The first and the last level written are compared, task by task; a task with one set, or with levels that are on no sheet, says nothing.</remarks>
public sealed record LevelMoves(int HarderCount, int EasierCount, int BothCount, int StayedCount, int ExploredCount, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>Pupils with two sets or more of a task, n.</summary>
    public int PupilCount => HarderCount + EasierCount + BothCount + StayedCount;

    /// <summary>The moves within a lesson, or over all of them.</summary>
    /// <param name="pupils">The class's pupils.</param>
    /// <param name="lessonId">The lesson; none for all lessons of the evidence.</param>
    public static LevelMoves Of(IReadOnlyList<PupilEvidence> pupils, Guid? lessonId = null)
    {
        var moved = pupils.Select(p => MovesOf(p, lessonId)).Where(m => m.Count > 0).ToList();
        bool Went(List<Steps> tasks, int way) => tasks.Any(t => Math.Sign(t.Numbers[^1] - t.Numbers[0]) == way);
        return new(
            moved.Count(m => Went(m, 1) && !Went(m, -1)),
            moved.Count(m => Went(m, -1) && !Went(m, 1)),
            moved.Count(m => Went(m, 1) && Went(m, -1)),
            moved.Count(m => !Went(m, 1) && !Went(m, -1)),
            moved.Count(m => m.Any(t => t.Numbers.Distinct().Count() > 1)),
            moved.SelectMany(m => m).SelectMany(t => t.EntryIds).ToList());
    }

    private static List<Steps> MovesOf(PupilEvidence pupil, Guid? lessonId) => (
        from task in pupil.Tasks
        let sets = task.Sets.Where(s => (lessonId is null || s.LessonId == lessonId) && s.LevelNumber is not null).ToList()
        where sets.Count > 1
        select new Steps([.. sets.Select(s => s.LevelNumber!.Value)], [.. sets.Select(s => s.ChoiceEntryId!.Value)])).ToList();

    private sealed record Steps(IReadOnlyList<int> Numbers, IReadOnlyList<Guid> EntryIds);
}
