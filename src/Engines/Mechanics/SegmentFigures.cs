namespace Slantwise.Engines.Mechanics;

/// <summary>Mass and centre of the segments, as published.</summary>
/// <remarks>
/// Masses as fractions of the body and centres as fractions of the segment's length from its upper end (the foot's from the
/// heel). Adults: 100 men and 15 women. Source: [DeLeva1996] table 4.
/// </remarks>
public static class SegmentFigures
{
    // kind, mass F, mass M, centre F, centre M. Trunk parts from their upper ends; head from the crown; hand from the wrist.
    private static readonly (SegmentKind Kind, double MassF, double MassM, double CentreF, double CentreM)[] Rows =
    [
        (SegmentKind.Head, .0668, .0694, .5894, .5976),
        (SegmentKind.UpperTrunk, .1545, .1596, .2077, .2999),
        (SegmentKind.MiddleTrunk, .1465, .1633, .4512, .4502),
        (SegmentKind.LowerTrunk, .1247, .1117, .4920, .6115),
        (SegmentKind.UpperArm, .0255, .0271, .5754, .5772),
        (SegmentKind.Forearm, .0138, .0162, .4559, .4574),
        (SegmentKind.Hand, .0056, .0061, .7474, .7900),
        (SegmentKind.Thigh, .1478, .1416, .3612, .4095),
        (SegmentKind.Shank, .0481, .0433, .4352, .4395),
        (SegmentKind.Foot, .0129, .0137, .4014, .4415),
    ];

    /// <summary>A segment's mass as printed, a fraction of the body; one side of a pair.</summary>
    /// <param name="kind">The segment.</param>
    /// <param name="table">Whose column.</param>
    public static double PrintedMassFraction(SegmentKind kind, BodyTable table) =>
        Pick(table, Row(kind).MassF, Row(kind).MassM);

    /// <summary>A segment's mass over the sum of all sixteen: the printed female column sums to .9999.</summary>
    /// <param name="kind">The segment.</param>
    /// <param name="table">Whose column.</param>
    public static double MassFraction(SegmentKind kind, BodyTable table) => table == BodyTable.Mean
        ? (MassFraction(kind, BodyTable.Female) + MassFraction(kind, BodyTable.Male)) / 2
        : PrintedMassFraction(kind, table) / Rows.Sum(r => (IsPaired(r.Kind) ? 2 : 1) * Pick(table, r.MassF, r.MassM));

    /// <summary>Where a segment's centre lies, a fraction of its length from its upper end (the foot's from the heel).</summary>
    /// <param name="kind">The segment.</param>
    /// <param name="table">Whose column.</param>
    public static double CentreFraction(SegmentKind kind, BodyTable table) =>
        Pick(table, Row(kind).CentreF, Row(kind).CentreM);

    /// <summary>Whether a body has two of it.</summary>
    /// <param name="kind">The segment.</param>
    public static bool IsPaired(SegmentKind kind) => kind >= SegmentKind.UpperArm;

    private static (SegmentKind Kind, double MassF, double MassM, double CentreF, double CentreM) Row(SegmentKind kind) =>
        Rows.First(r => r.Kind == kind);

    internal static double Pick(BodyTable table, double female, double male) => table switch
    {
        BodyTable.Female => female,
        BodyTable.Male => male,
        _ => (female + male) / 2,
    };
}
