using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Levels;

/// <summary>Which levels of a class's sheets are left to whom on a day. What policy and restrictions rule out comes before anything else is said.</summary>
internal sealed class LevelOffers
{
    private readonly Dictionary<Guid, IReadOnlyList<Level>> _byTask;
    private readonly Dictionary<Guid, Level> _levels;
    private readonly SafetyPolicy _policy;
    private readonly ILookup<Guid, Restriction> _restrictions;
    private readonly DateOnly _day;

    private LevelOffers(IReadOnlyList<SheetTask> tasks, SafetyPolicy policy, ILookup<Guid, Restriction> restrictions, DateOnly day)
    {
        (_policy, _restrictions, _day) = (policy, restrictions, day);
        _byTask = tasks.ToDictionary(t => t.TaskId, t => t.Levels);
        _levels = tasks.SelectMany(t => t.Levels).DistinctBy(l => l.Id).ToDictionary(l => l.Id);
    }

    public static LevelOffers Of(IReadOnlyList<LessonRecord> records, DateOnly day)
    {
        var ordered = records.OrderBy(r => r.Lesson.Date).ToList();
        return new(
            SheetMerge.Of([.. ordered.Select(r => r.Sheet?.Content.Tasks ?? [])]),
            ordered.Count == 0 ? new SafetyPolicy() : ordered[^1].School.Policy,
            // Each record holds those of today; a pupil who left since is in the earlier ones.
            ordered.AsEnumerable().Reverse().SelectMany(r => r.Restrictions).DistinctBy(r => r.Id).ToLookup(r => r.PupilId),
            day);
    }

    /// <summary>The levels of a task on all sheets; none for a task that is on no sheet.</summary>
    public IReadOnlyList<Level> LevelsOf(Guid taskId) => _byTask.GetValueOrDefault(taskId, []);

    /// <summary>Whether a level is left to a pupil; false for a level that is on no sheet.</summary>
    public bool IsOffered(Guid pupilId, Guid? levelId) => Offers(levelId, _restrictions[pupilId]);

    /// <summary>Whether the policy leaves a level to anybody; false for a level that is on no sheet.</summary>
    public bool IsOfferedToAnybody(Guid? levelId) => Offers(levelId, []);

    private bool Offers(Guid? levelId, IEnumerable<Restriction> restrictions) =>
        levelId is { } id && _levels.TryGetValue(id, out var level) && Offer.LevelsFor([level], _policy, restrictions, _day).Count > 0;
}
