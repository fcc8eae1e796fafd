using Slantwise.Engines.Statistics.Reach;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>Whom a sheet includes in a class, task by task, from all the class has done so far.</summary>
public static class ClassReach
{
    /// <summary>The reach of a sheet.</summary>
    /// <param name="sheet">As it would be printed.</param>
    /// <param name="kept">The tasks as they are kept, with levels that are not on the sheet; those not on the sheet are passed over.</param>
    /// <param name="lessons">The class's lessons, any order; may be empty.</param>
    /// <param name="pupils">Its pupils.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="restrictions">The pupils' restrictions.</param>
    /// <param name="day">The day of the lesson.</param>
    /// <param name="band">The chances of success that count as included.</param>
    /// <param name="work">Threads, progress and cancelling; none for one thread and nobody to tell.</param>
    /// <returns>One a task, in the order of the sheet.</returns>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static IReadOnlyList<TaskReach> Of(
        SheetContent sheet, IReadOnlyList<MovementTask> kept, IReadOnlyList<LessonRecord> lessons, IReadOnlyList<Pupil> pupils,
        SafetyPolicy policy, IReadOnlyList<Restriction> restrictions, DateOnly day, ReachBand band, ResponseWork? work = null) =>
        ReachBasis.Of(sheet, kept, lessons, pupils, work).Of(sheet, policy, restrictions, day, band);
}
