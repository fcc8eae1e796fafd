namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>A segment as it is marked on a picture: its mass, and its centre between two points.</summary>
/// <param name="MassFraction">Share of the body's mass, of one side for a paired segment.</param>
/// <param name="CentreFraction">Where the centre lies, a fraction of the way from the first point to the second.</param>
/// <param name="From">The first point.</param>
/// <param name="To">The second point.</param>
public readonly record struct MarkedSegment(double MassFraction, double CentreFraction, Landmark From, Landmark To)
{
    // Which ends a fraction belongs to matters more than its last digit. Trunk: middle of the shoulders to middle of the hips.
    // Hand: wrist to fingertip, since the knuckle hides in a hand on the floor. Shank and head are those of SegmentFigures.
    private const double TrunkF = .3782, TrunkM = .4310, HandF = .3427, HandM = .3624;

    // Shoulders to hips, navel to hips: 497.9 and 181.5 mm for women, 515.5 and 145.7 mm for men.
    private const double TrunkFMm = 497.9, TrunkMMm = 515.5, LowerFMm = 181.5, LowerMMm = 145.7;

    /// <summary>Whether a body has two of it.</summary>
    public bool IsPaired => MarkedPoint.IsPaired(From) && MarkedPoint.IsPaired(To) && (From, To) != (Landmark.Shoulder, Landmark.Hip);

    /// <summary>The segments between marked points.</summary>
    /// <param name="table">Whose fractions.</param>
    /// <param name="hasWaist">Whether the waist is marked: then the trunk is in two pieces.</param>
    /// <returns>Masses that sum to 1, the paired ones taken twice.</returns>
    /// <remarks>
    /// The upper piece of a trunk in two is what is left of the whole trunk when its lower part is taken away, in mass and in first
    /// moment. Source: [DeLeva1996] table 4, with its alternative ends for trunk (mid-shoulder to mid-hip) and hand (wrist to fingertip).
    /// </remarks>
    public static IReadOnlyList<MarkedSegment> Of(BodyTable table, bool hasWaist)
    {
        var trunk = Mass(SegmentKind.UpperTrunk) + Mass(SegmentKind.MiddleTrunk) + Mass(SegmentKind.LowerTrunk);
        var lower = Mass(SegmentKind.LowerTrunk);
        return
        [
            Same(SegmentKind.Head, Landmark.Crown, Landmark.Jaw),
            .. hasWaist
                ? [new(trunk - lower, SegmentFigures.Pick(table, UpperPiece(BodyTable.Female), UpperPiece(BodyTable.Male)), Landmark.Shoulder, Landmark.Waist), Same(SegmentKind.LowerTrunk, Landmark.Waist, Landmark.Hip)]
                : new MarkedSegment[] { new(trunk, SegmentFigures.Pick(table, TrunkF, TrunkM), Landmark.Shoulder, Landmark.Hip) },
            Same(SegmentKind.UpperArm, Landmark.Shoulder, Landmark.Elbow),
            Same(SegmentKind.Forearm, Landmark.Elbow, Landmark.Wrist),
            new(Mass(SegmentKind.Hand), SegmentFigures.Pick(table, HandF, HandM), Landmark.Wrist, Landmark.Fingertip),
            Same(SegmentKind.Thigh, Landmark.Hip, Landmark.Knee),
            Same(SegmentKind.Shank, Landmark.Knee, Landmark.Ankle),
            Same(SegmentKind.Foot, Landmark.Heel, Landmark.Toe),
        ];

        double Mass(SegmentKind kind) => SegmentFigures.MassFraction(kind, table);
        MarkedSegment Same(SegmentKind kind, Landmark from, Landmark to) => new(Mass(kind), SegmentFigures.CentreFraction(kind, table), from, to);
    }

    private static double UpperPiece(BodyTable table)
    {
        double Mass(SegmentKind kind) => SegmentFigures.PrintedMassFraction(kind, table);
        var (trunkMm, lowerMm) = (SegmentFigures.Pick(table, TrunkFMm, TrunkMMm), SegmentFigures.Pick(table, LowerFMm, LowerMMm));
        var (lower, rest) = (Mass(SegmentKind.LowerTrunk), Mass(SegmentKind.UpperTrunk) + Mass(SegmentKind.MiddleTrunk));
        var (restMm, lowerCentreMm) = (trunkMm - lowerMm, trunkMm - lowerMm + SegmentFigures.CentreFraction(SegmentKind.LowerTrunk, table) * lowerMm);
        return ((rest + lower) * SegmentFigures.Pick(table, TrunkF, TrunkM) * trunkMm - lower * lowerCentreMm) / rest / restMm;
    }
}
