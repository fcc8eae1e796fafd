using CsCheck;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class SkeletonTests
{
    private static readonly Gen<Pose> AnyPose = Gen.Double[-1, 1].Array[31].Select(spread =>
    {
        var pose = Pose.Upright.Placed(spread[0] * 3, spread[1], spread[2] * 3);
        var next = 3;
        foreach (var joint in Enum.GetValues<Joint>())
            foreach (var side in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                pose = pose.With(joint, side, spread[next++]);
        return pose;
    });

    [Theory]
    // Textbooks give 57 % of stature for men and 55 % for women (undergraduate biomechanics notes; Croskey 1922 has 56.2 and 55.4, from memory).
    [InlineData(BodyTable.Male, .57)]
    [InlineData(BodyTable.Female, .55)]
    public void CentreOfMass_Standing_AtTheTextbookHeight(BodyTable table, double textbookFraction)
    {
        var body = SettledBody.Of(Pose.Upright, [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);
        Assert.Equal(textbookFraction, body.Skeleton.CentreOfMass(table).ZH, .02);
    }

    [Fact]
    public void Of_Standing_IsOneStatureHigh()
    {
        var body = SettledBody.Of(Pose.Upright, [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);
        var crown = body.Skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH));
        Assert.Equal(1, crown.ZH, 1e-9);
        Assert.Equal(0, body.GapH, 1e-9);
    }

    [Fact]
    public void MassFraction_OfAllSegments_SumsToOne()
    {
        foreach (var table in Enum.GetValues<BodyTable>())
            Assert.Equal(1, Skeleton.Segments.Sum(s => SegmentFigures.MassFraction(s.Kind, table)), 1e-12);
        // Source: [DeLeva1996] table 4: the printed columns sum to 99.99 and 100.00.
        Assert.Equal(.9999, Skeleton.Segments.Sum(s => SegmentFigures.PrintedMassFraction(s.Kind, BodyTable.Female)), 1e-9);
        Assert.Equal(1, Skeleton.Segments.Sum(s => SegmentFigures.PrintedMassFraction(s.Kind, BodyTable.Male)), 1e-9);
    }

    [Theory]
    // By hand, from the meaning of each movement: where the left wrist or ankle goes from its joint.
    [InlineData(Joint.ShoulderFlexion, 90, SegmentKind.UpperArm, SegmentKind.Forearm, 1, 0, 0)]
    [InlineData(Joint.ShoulderAbduction, 90, SegmentKind.UpperArm, SegmentKind.Forearm, 0, 1, 0)]
    [InlineData(Joint.ShoulderFlexion, 180, SegmentKind.UpperArm, SegmentKind.Forearm, 0, 0, 1)]
    [InlineData(Joint.HipFlexion, 90, SegmentKind.Thigh, SegmentKind.Shank, 1, 0, 0)]
    [InlineData(Joint.HipAbduction, 90, SegmentKind.Thigh, SegmentKind.Shank, 0, 1, 0)]
    public void Of_OneJointBent_LimbPointsWhereTheNameSays(Joint joint, double angleDeg, SegmentKind from, SegmentKind to, double x, double y, double z)
    {
        var skeleton = Skeleton.Of(Pose.Upright.With(joint, Side.Left, angleDeg * Math.PI / 180));
        var limb = skeleton.Frame(to, Side.Left).Origin - skeleton.Frame(from, Side.Left).Origin;
        var direction = 1 / limb.LengthH * limb;
        Assert.True((direction - new Point3(x, y, z)).LengthH < 1e-9, $"{direction}");
    }

    [Fact]
    public void Of_KneeBent_ShankPointsBackAndFootDown()
    {
        var skeleton = Skeleton.Of(Pose.Upright.With(Joint.KneeFlexion, Side.Left, Math.PI / 2));
        var shank = skeleton.Frame(SegmentKind.Foot, Side.Left).Origin - skeleton.Frame(SegmentKind.Shank, Side.Left).Origin;
        Assert.Equal(-BodyLengths.ShankH, shank.XH, 1e-9);
        Assert.Equal(-1, skeleton.Frame(SegmentKind.Foot, Side.Left).Turned.Of(new(1, 0, 0)).ZH, 1e-9);
    }

    [Fact]
    public void CentreOfMass_OfAMirroredPose_IsMirrored() => AnyPose.Sample(pose =>
    {
        var here = Skeleton.Of(pose).CentreOfMass(BodyTable.Mean);
        var there = Skeleton.Of(pose.Mirrored()).CentreOfMass(BodyTable.Mean);
        Assert.True((here - new Point3(there.XH, -there.YH, there.ZH)).LengthH < 1e-12);
    });

    [Fact]
    public void Of_AnyPose_KeepsEveryLength() => AnyPose.Sample(pose =>
    {
        var skeleton = Skeleton.Of(pose);
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            Assert.Equal(BodyLengths.ThighH, (skeleton.Frame(SegmentKind.Shank, side).Origin - skeleton.Frame(SegmentKind.Thigh, side).Origin).LengthH, 1e-12);
            Assert.Equal(BodyLengths.ForearmH, (skeleton.Frame(SegmentKind.Hand, side).Origin - skeleton.Frame(SegmentKind.Forearm, side).Origin).LengthH, 1e-12);
        }
    });

    [Fact]
    public void Of_PoseTurnedAboutTheVertical_SameBalance() => Gen.Select(AnyPose, Gen.Double[-3, 3]).Sample((pose, turnRad) =>
    {
        Contact[] feet = [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right), new(ContactPart.Hand, Side.Left)];
        var before = SettledBody.Of(pose, feet);
        var after = SettledBody.Of(pose.Placed(pose.BowRad, pose.LeanRad, pose.TurnRad + turnRad), feet);
        Assert.Equal(before.GapH, after.GapH, 1e-6);
        if (before.Skeleton.CentreOfMass(BodyTable.Mean).ZH <= 0.01) return;
        Assert.Equal(BodyBalance.Of(before).Margin.MarginH, BodyBalance.Of(after).Margin.MarginH, 1e-6);
    });
}
