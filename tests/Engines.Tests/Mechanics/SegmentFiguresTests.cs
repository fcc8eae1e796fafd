using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Tests.Mechanics.Published;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class SegmentFiguresTests
{
    [Theory]
    [InlineData(SegmentKind.Head, "Head", "VERT", "MIDG")]
    [InlineData(SegmentKind.UpperTrunk, "Upper part of trunk", "SUPR", "XYPH")]
    [InlineData(SegmentKind.MiddleTrunk, "Middle part of trunk", "XYPH", "OMPH")]
    [InlineData(SegmentKind.LowerTrunk, "Lower part of trunk", "OMPH", "MIDH")]
    [InlineData(SegmentKind.UpperArm, "Upper arm", "SJC", "EJC")]
    [InlineData(SegmentKind.Forearm, "Forearm", "EJC", "WJC")]
    [InlineData(SegmentKind.Hand, "Hand", "WJC", "MET3")]
    [InlineData(SegmentKind.Thigh, "Thigh", "HJC", "KJC")]
    [InlineData(SegmentKind.Shank, "Shank", "KJC", "AJC")]
    [InlineData(SegmentKind.Foot, "Foot", "HEEL", "TTIP")]
    public void Figures_OfASegment_AsPrintedBetweenTheEndsTheSkeletonHas(SegmentKind kind, string segment, string from, string to)
    {
        foreach (var (table, sex) in new[] { (BodyTable.Female, "F"), (BodyTable.Male, "M") })
        {
            var row = DeLevaTable.Row(sex, segment, from, to);
            Assert.Equal(row.MassPercent / 100, SegmentFigures.PrintedMassFraction(kind, table), 1e-12);
            Assert.Equal(row.CentrePercent / 100, SegmentFigures.CentreFraction(kind, table), 1e-12);
        }
    }

    [Theory]
    // By hand from the printed rows, tolerance the rounding of a tenth of a millimetre: every definition puts the centre at one place.
    [InlineData("F", "Shank", "KJC", 190.9)]
    [InlineData("M", "Shank", "KJC", 193.5)]
    [InlineData("F", "Hand", "WJC", 58.3)]
    [InlineData("M", "Hand", "WJC", 68.1)]
    [InlineData("F", "Head", "VERT", 118.0)]
    [InlineData("M", "Head", "VERT", 121.5)]
    public void Rows_OfOneSegmentFromOneEnd_PutTheCentreAtOnePlace(string sex, string segment, string from, double centreMm)
    {
        var rows = DeLevaTable.Rows.Where(r => r.Sex == sex && r.Segment == segment && r.From == from).ToList();
        Assert.True(rows.Count > 1);
        Assert.All(rows, row => Assert.Equal(centreMm, row.CentreMm, .1));
    }

    [Theory]
    // By hand: from the hips up, 309.6 and 293.3 mm by all three definitions of the trunk.
    [InlineData("F", 309.6)]
    [InlineData("M", 293.3)]
    public void Rows_OfTheTrunk_PutTheCentreAtOneHeightOverTheHips(string sex, double overHipsMm) =>
        Assert.All(DeLevaTable.Rows.Where(r => r.Sex == sex && r.Segment == "Trunk"), r => Assert.Equal(overHipsMm, r.LengthMm - r.CentreMm, .1));

    [Theory]
    // The female parts close to a tenth of a millimetre; the male ones leave 3 mm in the published data.
    [InlineData("F", .1)]
    [InlineData("M", 3.5)]
    public void Rows_OfTheTrunksParts_MakeTheTrunk(string sex, double toleranceMm)
    {
        var trunk = DeLevaTable.Row(sex, "Trunk", "SUPR", "MIDH");
        DeLevaRow[] parts = [
            DeLevaTable.Row(sex, "Upper part of trunk", "SUPR", "XYPH"),
            DeLevaTable.Row(sex, "Middle part of trunk", "XYPH", "OMPH"),
            DeLevaTable.Row(sex, "Lower part of trunk", "OMPH", "MIDH")];
        Assert.Equal(trunk.MassPercent, parts.Sum(p => p.MassPercent), 1e-9);
        Assert.Equal(trunk.LengthMm, parts.Sum(p => p.LengthMm), 1e-9);
        var (topMm, sum) = (0.0, 0.0);
        foreach (var part in parts)
        {
            sum += part.MassPercent * (topMm + part.CentreMm);
            topMm += part.LengthMm;
        }
        Assert.Equal(trunk.CentreMm, sum / trunk.MassPercent, toleranceMm);
    }

    [Theory]
    // Each sex stacked from its own printed lengths with an ankle at .039 of stature: 57.46 and 55.35 %; textbooks print 57 and 55.
    [InlineData("M", DeLevaTable.ManMm, .5746, .57)]
    [InlineData("F", DeLevaTable.WomanMm, .5535, .55)]
    public void Rows_StackedToAStandingBody_CentreAtTheTextbookHeight(string sex, double statureMm, double stackedFraction, double textbookFraction)
    {
        var thigh = DeLevaTable.Row(sex, "Thigh", "HJC", "KJC");
        var shank = DeLevaTable.Row(sex, "Shank", "KJC", "AJC");
        var trunk = DeLevaTable.Row(sex, "Trunk", "MIDS", "MIDH");
        var head = DeLevaTable.Row(sex, "Head", "VERT", "MIDG");
        var arm = new[] { DeLevaTable.Row(sex, "Upper arm", "SJC", "EJC"), DeLevaTable.Row(sex, "Forearm", "EJC", "WJC"), DeLevaTable.Row(sex, "Hand", "WJC", "MET3") };
        var foot = DeLevaTable.Row(sex, "Foot", "HEEL", "TTIP");
        var ankleMm = .039 * statureMm;
        var (kneeMm, hipMm) = (ankleMm + shank.LengthMm, ankleMm + shank.LengthMm + thigh.LengthMm);
        var shoulderMm = hipMm + trunk.LengthMm;
        List<PointMass> masses = [
            At(head.MassPercent, statureMm - head.CentreMm), At(trunk.MassPercent, shoulderMm - trunk.CentreMm),
            At(2 * thigh.MassPercent, hipMm - thigh.CentreMm), At(2 * shank.MassPercent, kneeMm - shank.CentreMm), At(2 * foot.MassPercent, ankleMm / 2)];
        var topMm = shoulderMm;
        foreach (var part in arm)
        {
            masses.Add(At(2 * part.MassPercent, topMm - part.CentreMm));
            topMm -= part.LengthMm;
        }
        var centreFraction = CentreOfMass.Of(masses.ToArray()).ZH / statureMm;
        Assert.Equal(stackedFraction, centreFraction, 2e-3);
        Assert.Equal(textbookFraction, centreFraction, .01);

        // The skeleton has one set of limb lengths for both sexes, so it agrees less closely.
        var standing = SettledBody.Of(Pose.Upright, [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);
        Assert.Equal(centreFraction, standing.Skeleton.CentreOfMass(sex == "M" ? BodyTable.Male : BodyTable.Female).ZH, .015);
    }

    [Fact]
    public void Standing_FromAnotherPublishedTable_CentreNearOurs()
    {
        // Dempster's fractions in [Winter2009] table 4.1 on the lengths of its fig. 4.1:
        // .678·(.530 + .626·.288) + .200·(.530 − .433·.245) + .093·(.285 − .433·.246) + .029·.0195 = .5835.
        var dempster = CentreOfMass.Of([
            At(.678, .530 + .626 * .288), At(.200, .530 - .433 * .245), At(.093, .285 - .433 * .246), At(.029, .0195)]).ZH;
        Assert.Equal(.5835, dempster, 5e-4);
        var standing = SettledBody.Of(Pose.Upright, [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);
        Assert.Equal(dempster, standing.Skeleton.CentreOfMass(BodyTable.Mean).ZH, .02);
    }

    private static PointMass At(double massPercent, double heightMm) => new(massPercent, new Point3(0, 0, heightMm));
}
