using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Live;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Results;

/// <summary>What the entries so far say about one pupil: at the level of each task's latest set, and at most one question.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="EntryCount">The entries of the lesson it rests on.</param>
/// <param name="Levels">One a task with a level written, in the order of the sheet.</param>
/// <param name="Question">What could be asked; none where no rule of ours has a reason to.</param>
public sealed record LiveView(Guid PupilId, int EntryCount, IReadOnlyList<LiveLevel> Levels, Conference? Question)
{
    /// <summary>The view of a pupil.</summary>
    /// <param name="live">The class.</param>
    /// <param name="sheet">The lesson's sheet.</param>
    /// <param name="pupil">The pupil.</param>
    public static LiveView Of(LiveClass live, SheetContent sheet, Pupil pupil)
    {
        var levels = new List<LiveLevel>();
        var sets = live.SetsOf(pupil.Id);
        foreach (var task in sheet.Tasks)
        {
            if (sets.LastOrDefault(s => s.TaskId == task.TaskId && s.SheetLevelNumber is not null) is not { SheetLevelNumber: { } number }) continue;
            var level = task.Levels[number - 1];
            var today = SuccessShare.Of(sets.Where(s => s.LevelId == level.Id).SelectMany(s => s.Trials));
            if (live.Chances.Chances(pupil.Id, [level], live.Now) is [{ } chance])
                levels.Add(LiveLevel.Of(task.Name, number, level, chance, today, live.Chances.TrialCountOf(pupil.Id)));
        }
        return new(pupil.Id, live.EntryCount, levels, live.QuestionsOf(pupil.Id).FirstOrDefault());
    }
}
