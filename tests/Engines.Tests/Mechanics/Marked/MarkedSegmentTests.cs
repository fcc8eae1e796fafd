using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

public sealed class MarkedSegmentTests
{
    [Theory]
    [InlineData(BodyTable.Mean)]
    [InlineData(BodyTable.Female)]
    [InlineData(BodyTable.Male)]
    public void Of_AnyTable_WholeOrInTwoPiecesTheMassesSumToOne(BodyTable table)
    {
        foreach (var hasWaist in new[] { false, true })
            Assert.Equal(1, MarkedSegment.Of(table, hasWaist).Sum(s => (s.IsPaired ? 2 : 1) * s.MassFraction), 1e-12);
    }

    [Theory]
    // By hand from the printed millimetres of [DeLeva1996] table 4. Women: trunk 497.9 mm with its centre at .3782, lower trunk 181.5 mm
    // with its centre at .4920 from the navel; 188.31·.4257 − (316.4 + 89.30)·.1247 over .3010 is 98.2 of 316.4 mm. Men likewise
    // 222.18·.4346 − (369.8 + 89.10)·.1117 over .3229 is 140.3 of 369.8 mm.
    [InlineData(BodyTable.Female, 98.2 / 316.4, .3010 / .9999)]
    [InlineData(BodyTable.Male, 140.3 / 369.8, .3229)]
    public void Of_TrunkInTwoPieces_UpperPieceIsWhatIsLeft(BodyTable table, double centreFraction, double massFraction)
    {
        var upper = MarkedSegment.Of(table, hasWaist: true).Single(s => s.To == Landmark.Waist);
        Assert.Equal(centreFraction, upper.CentreFraction, 5e-4);
        Assert.Equal(massFraction, upper.MassFraction, 1e-9);
    }

    [Theory]
    [InlineData(BodyTable.Female, 497.9, 316.4)]
    [InlineData(BodyTable.Male, 515.5, 369.8)]
    public void Of_StraightTrunk_WaistMarkedAtTheNavelChangesNothing(BodyTable table, double trunkMm, double navelMm)
    {
        MarkedPoint[] marks =
        [
            new(Landmark.Shoulder, Side.Middle, new(0, 0)), new(Landmark.Waist, Side.Middle, new(0, navelMm)), new(Landmark.Hip, Side.Middle, new(0, trunkMm)),
        ];
        PointPx Trunk(bool hasWaist) => MarkedCentre.Of(
            marks, [.. MarkedSegment.Of(table, hasWaist).Where(s => !s.IsPaired && s.From != Landmark.Crown)]);
        Assert.Equal(Trunk(false).YPx, Trunk(true).YPx, 1e-9);
    }

    [Theory]
    // Both definitions of one segment in [DeLeva1996] table 4 put the centre at the same millimetre: hand 170.1 and 187.9 mm to the
    // fingertip, 78.0 and 86.2 mm to the knuckle. Within a tenth of a millimetre, as printed.
    [InlineData(BodyTable.Female, 170.1, 78.0)]
    [InlineData(BodyTable.Male, 187.9, 86.2)]
    public void Of_Hand_FingertipAndKnuckleAgree(BodyTable table, double tipMm, double knuckleMm) => Assert.Equal(
        knuckleMm * SegmentFigures.CentreFraction(SegmentKind.Hand, table),
        tipMm * MarkedSegment.Of(table, false).Single(s => s.To == Landmark.Fingertip).CentreFraction, .1);
}
