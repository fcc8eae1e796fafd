using Slantwise.Engines.Statistics.Reach;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>What is believed of a class at every level its tasks have or could have: worked out once, then asked again while only the choice of levels changes.</summary>
public sealed class ReachBasis
{
    private readonly IReadOnlyList<SheetTask> _tasks;
    private readonly Dictionary<Guid, IReadOnlyList<CandidateLevel>> _doses;
    private readonly IReadOnlyList<Pupil> _pupils;

    private ReachBasis(IReadOnlyList<SheetTask> tasks, Dictionary<Guid, IReadOnlyList<CandidateLevel>> doses, IReadOnlyList<Pupil> pupils, ClassChances chances) =>
        (_tasks, _doses, _pupils, Chances) = (tasks, doses, pupils, chances);

    /// <summary>The chances it rests on.</summary>
    public ClassChances Chances { get; }

    /// <summary>Fits a class.</summary>
    /// <param name="sheet">Tasks as they would be printed.</param>
    /// <param name="kept">The tasks as they are kept, with levels that are not on the sheet; those not on the sheet are passed over.</param>
    /// <param name="lessons">The class's lessons, any order; may be empty.</param>
    /// <param name="pupils">Its pupils.</param>
    /// <param name="work">Threads, progress and cancelling; none for one thread and nobody to tell.</param>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static ReachBasis Of(
        SheetContent sheet, IReadOnlyList<MovementTask> kept, IReadOnlyList<LessonRecord> lessons, IReadOnlyList<Pupil> pupils, ResponseWork? work = null)
    {
        var tasks = sheet.Tasks.Select(task => Whole(task, kept.FirstOrDefault(k => k.Id == task.TaskId))).ToList();
        var doses = tasks.ToDictionary(t => t.TaskId, t => CandidateLevels.Of(t.TaskId, t.Levels, t.Levels));
        var chances = ClassChances.Of(lessons, tasks, [.. doses.Values.SelectMany(d => d)], pupils, work: work);
        return new ReachBasis(tasks, doses, pupils, chances);
    }

    /// <summary>Whether a sheet's tasks and levels are all among those it was worked out for.</summary>
    /// <param name="sheet">As it would be printed now.</param>
    public bool Covers(SheetContent sheet) => sheet.Tasks.All(task => _tasks.FirstOrDefault(t => t.TaskId == task.TaskId) is { } whole
        && task.Levels.All(level => whole.Levels.Any(l => l.Id == level.Id && l.Dose == level.Dose && l.Name == level.Name && l.Posture == level.Posture && l.Demands.ToHashSet().SetEquals(level.Demands))));

    /// <summary>The reach of a sheet that is covered.</summary>
    /// <param name="sheet">As it would be printed now.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="restrictions">The pupils' restrictions.</param>
    /// <param name="day">The day of the lesson.</param>
    /// <param name="band">The chances of success that count as included.</param>
    /// <returns>One a task, in the order of the sheet.</returns>
    /// <exception cref="ArgumentException">The sheet has tasks or levels it was not worked out for.</exception>
    public IReadOnlyList<TaskReach> Of(SheetContent sheet, SafetyPolicy policy, IReadOnlyList<Restriction> restrictions, DateOnly day, ReachBand band)
    {
        if (!Covers(sheet)) throw new ArgumentException("The sheet has tasks or levels that were not fitted.", nameof(sheet));
        return [.. sheet.Tasks.Select(task => TaskReach.Of(task, CandidatesFor(task), _pupils, policy, restrictions, day, Chances, band))];
    }

    // In the order they are kept in, so that a level left off the sheet has its place in the teacher's order too; each as the sheet would print it.
    private static SheetTask Whole(SheetTask task, MovementTask? kept) => kept is null ? task : task with
    {
        Levels = [.. kept.Levels.Select(k => task.Levels.FirstOrDefault(l => l.Id == k.Id) ?? k), .. task.Levels.Where(l => kept.Levels.All(k => k.Id != l.Id))],
    };

    private List<CandidateLevel> CandidatesFor(SheetTask task)
    {
        var whole = _tasks.First(t => t.TaskId == task.TaskId);
        var own = whole.Levels.Where(l => task.Levels.All(s => s.Id != l.Id && !CandidateLevels.IsAlike(s, l))).Select(l => new CandidateLevel(task.TaskId, l, l.Id));
        return [.. own, .. _doses[task.TaskId]];
    }
}
