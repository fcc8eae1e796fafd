using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Safety;

/// <summary>A working rule that proposes a level of risk from what a task offers. The teacher's own judgement replaces it.</summary>
/// <remarks>
/// The grading is our own: what is upside down or on the head is high; what rolls, lands, hangs on the hands, has a height, or shares the floor with things
/// that fly or swing is medium; the rest is low. Graded guidelines of education departments were its model. Source: [QldCara2021], where gymnastics with
/// controlled inversion or apparatus over 40 cm is high and other fundamental movement medium. We do not take over its levels: it begins at medium.
/// </remarks>
public static class RiskRule
{
    /// <summary>Above this height the guideline puts apparatus one level higher, so that the page asks.</summary>
    /// <remarks>Source: [QldCara2021], 40 cm.</remarks>
    public const decimal TallM = 0.4m;

    private static readonly Dictionary<BodyDemand, RiskReason> Demanded = new()
    {
        [BodyDemand.HeadWeight] = RiskReason.HeadWeight,
        [BodyDemand.Inversion] = RiskReason.Inversion,
        [BodyDemand.Roll] = RiskReason.Roll,
        [BodyDemand.HandWeight] = RiskReason.HandWeight,
        [BodyDemand.Impact] = RiskReason.Impact,
    };

    /// <summary>What about a task asks for more than the usual care.</summary>
    /// <param name="offered">The levels that are offered to anybody; may be empty.</param>
    /// <param name="pattern">The family of its movement; none where the task has no design.</param>
    /// <param name="others">The families of the lesson's other tasks.</param>
    /// <returns>Each once, in the order of <see cref="RiskReason"/>. Empty where nothing is offered.</returns>
    public static IReadOnlyList<RiskReason> ReasonsOf(IReadOnlyList<Level> offered, MovementPattern? pattern, IEnumerable<MovementPattern> others)
    {
        if (offered.Count == 0) return [];
        var reasons = offered.SelectMany(PostureDemands.Of).Where(Demanded.ContainsKey).Select(d => Demanded[d]).ToHashSet();
        if (TallestM(offered, pattern) > 0) reasons.Add(RiskReason.Height);
        if (pattern is { } own && Flies(own)) reasons.Add(RiskReason.Flying);
        else if (others.Any(Flies)) reasons.Add(RiskReason.FlyingNearby);
        if (pattern is MovementPattern.RopeJumping) reasons.Add(RiskReason.Swinging);
        return [.. reasons.Order()];
    }

    /// <summary>The proposed level of risk.</summary>
    /// <param name="reasons">What asks for more than the usual care.</param>
    public static RiskLevel LevelOf(IReadOnlyCollection<RiskReason> reasons) =>
        reasons.Any(r => r is RiskReason.HeadWeight or RiskReason.Inversion) ? RiskLevel.High
        : reasons.Count > 0 ? RiskLevel.Medium
        : RiskLevel.Low;

    /// <summary>The greatest height in metres a body goes from, over or to; 0 where there is none. The height of a ball is none.</summary>
    /// <param name="offered">The levels that are offered.</param>
    /// <param name="pattern">The family of the movement; none where the task has no design, and then any height counts.</param>
    public static decimal TallestM(IReadOnlyList<Level> offered, MovementPattern? pattern) =>
        pattern is MovementPattern.Throw or MovementPattern.Catch or MovementPattern.Strike or MovementPattern.Dribble ? 0
        : offered.Where(l => l.Dose.Kind == DoseKind.HeightM).Select(l => l.Dose.Amount).DefaultIfEmpty(0).Max();

    private static bool Flies(MovementPattern pattern) => pattern is MovementPattern.Throw or MovementPattern.Catch or MovementPattern.Strike;
}
