using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Levels;

/// <summary>Which levels of a class's sheets are left to whom on a day. What policy and restrictions rule out comes before anything else is said.</summary>
internal sealed class LevelOffers
{
    private readonly Dictionary<Guid, Level> _levels;
    private readonly SafetyPolicy _policy;
    private readonly ILookup<Guid, Restriction> _restrictions;
    private readonly DateOnly _day;

    private LevelOffers(Dictionary<Guid, Level> levels, SafetyPolicy policy, ILookup<Guid, Restriction> restrictions, DateOnly day) =>
        (_levels, _policy, _restrictions, _day) = (levels, policy, restrictions, day);

    public static LevelOffers Of(IReadOnlyList<LessonRecord> records, DateOnly day)
    {
        var ordered = records.OrderBy(r => r.Lesson.Date).ToList();
        var tasks = SheetMerge.Of([.. ordered.Select(r => r.Sheet?.Content.Tasks ?? [])]);
        return new(
            tasks.SelectMany(t => t.Levels).DistinctBy(l => l.Id).ToDictionary(l => l.Id),
            ordered.Count == 0 ? new SafetyPolicy() : ordered[^1].School.Policy,
            // Each record holds those of today; a pupil who left since is in the earlier ones.
            ordered.AsEnumerable().Reverse().SelectMany(r => r.Restrictions).DistinctBy(r => r.Id).ToLookup(r => r.PupilId),
            day);
    }

    /// <summary>Whether a level is left to a pupil; false for a level that is on no sheet.</summary>
    public bool IsOffered(Guid pupilId, Guid? levelId) => Offers(levelId, _restrictions[pupilId]);

    /// <summary>Whether the policy leaves a level to anybody; false for a level that is on no sheet.</summary>
    public bool IsOfferedToAnybody(Guid? levelId) => Offers(levelId, []);

    private bool Offers(Guid? levelId, IEnumerable<Restriction> restrictions) =>
        levelId is { } id && _levels.TryGetValue(id, out var level) && Offer.LevelsFor([level], _policy, restrictions, _day).Count > 0;
}
