using System.Xml.Linq;
using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;
using Snapshooter.Xunit3;

namespace Slantwise.Records.Tests.Postures.Figures;

public sealed class PostureFigureTests
{
    private static readonly SettledPosture[] Library = [.. PostureLibrary.All.Select(p => p.Settle()), .. SamplePostures.All.Values];
    private static readonly FigureView[] Views = Enum.GetValues<FigureView>();

    [Fact]
    public void Of_EveryPostureAndView_StaysInItsBox()
    {
        foreach (var (settled, view) in Each())
        {
            foreach (var (widthMm, heightMm) in new[] { (25.0, 25.0), (80, 40), (12, 60) })
            {
                var scene = PostureFigure.Of(settled, Full(view, widthMm, heightMm), "").Scene;
                var (leftMm, topMm, rightMm, bottomMm) = Bounds(scene);
                Assert.True(leftMm >= 0 && topMm >= 0 && rightMm <= widthMm && bottomMm <= heightMm,
                    $"{settled.Posture.Key}, {view}, {widthMm} by {heightMm}: from ({leftMm:0.00}, {topMm:0.00}) to ({rightMm:0.00}, {bottomMm:0.00})");
            }
        }
    }

    [Fact]
    public void Of_EveryPostureAndView_IsWellFormedSvgOfASmallFile()
    {
        foreach (var (settled, view) in Each())
        {
            var svg = SvgWriter.Write(PostureFigure.Of(settled, Full(view, 80, 80), "A figure. It stands.").Scene);
            Assert.Equal("svg", XElement.Parse(svg).Name.LocalName);
            // Sixty figures on a page of the library are then under a megabyte before compression, two bodies counted.
            Assert.True(svg.Length < 20_000 * settled.Bodies.Count, $"{settled.Posture.Key}, {view}: {svg.Length}");
        }
    }

    [Fact]
    public void Of_MirroredPosture_MirrorsTheFront()
    {
        foreach (var settled in Library)
        {
            var options = new FigureOptions(FigureView.Front, 40, 40) { ShowsFloor = false };
            var (figure, mirrored) = (PostureFigure.Of(settled, options, ""), PostureFigure.Of(Mirrored(settled.Posture).Settle(), options, ""));
            var (silhouette, other) = (new Silhouette(figure.Scene), new Silhouette(mirrored.Scene));
            var (differing, covered) = (0, 0);
            for (var xMm = .26; xMm < 40; xMm += 1)
            {
                for (var yMm = .26; yMm < 40; yMm += 1)
                {
                    var isCovered = silhouette.Covers(xMm, yMm);
                    if (isCovered) covered++;
                    if (isCovered != other.Covers(40 - xMm, yMm)) differing++;
                }
            }
            // A hundredth of a millimetre of rounding moves a few points that lie on an edge.
            Assert.True(covered > 50 && differing <= covered / 50 + 1, $"{settled.Posture.Key}: {differing} of {covered} points differ");
        }
    }

    [Fact]
    public void Of_SideView_FaceLooksToTheRight()
    {
        foreach (var settled in Library)
        {
            var head = settled.Body.Skeleton.Frame(SegmentKind.Head, Side.Middle);
            if (Math.Abs(head.Turned.X.XH) < .2) continue;
            var frame = PostureFigure.Of(settled, new FigureOptions(FigureView.Side, 40, 40), "").Frame;
            Assert.True(frame.At(head.At(new(.1, 0, 0))).XMm > frame.At(head.Origin).XMm, settled.Posture.Key);
        }
    }

    [Fact]
    public void Of_EveryPosture_FaceIsSeenFromTheFrontUnlessItLooksAway()
    {
        foreach (var settled in Library)
        {
            var head = settled.Body.Skeleton.Frame(SegmentKind.Head, Side.Middle);
            if (Math.Abs(head.Turned.X.XH) < .2) continue;
            var frame = PostureFigure.Of(settled, new FigureOptions(FigureView.Front, 40, 40), "").Frame;
            Assert.True(frame.At(head.At(new(.1, 0, 0))).DepthMm > frame.At(head.Origin).DepthMm, settled.Posture.Key);
        }
    }

    [Fact]
    public void Move_AnyMove_IsWhatIsDrawn() => Gen.Select(Gen.Enum<FigureView>(), Gen.Bool, Gen.Double[-2, 2].Array[3], Gen.Double[-40, 40].Array[2]).Sample((view, isFromBehind, p, move) =>
    {
        var frame = new FigureFrame(view, isFromBehind, 70, 30, 60);
        var point = new Point3(p[0], p[1], p[2]);
        var (before, after) = (frame.At(point), frame.At(point + frame.Move(move[0], move[1])));
        Assert.Equal(move[0], after.XMm - before.XMm, 1e-9);
        Assert.Equal(move[1], after.YMm - before.YMm, 1e-9);
        Assert.Equal(before.DepthMm, after.DepthMm, 1e-9);
    });

    [Fact]
    public void At_StandingFromTheSideAndTheFront_ByHand()
    {
        // 1 stature is 50 mm; a point 0.2 in front, 0.1 to the left and 0.5 up.
        var point = new Point3(.2, .1, .5);
        AssertAt((40, 35, -5), new FigureFrame(FigureView.Side, false, 50, 30, 60).At(point));
        AssertAt((20, 35, 5), new FigureFrame(FigureView.Side, true, 50, 30, 60).At(point));
        AssertAt((35, 35, 10), new FigureFrame(FigureView.Front, false, 50, 30, 60).At(point));
    }

    [Fact]
    public void FittingMm_OfSeveral_DrawsAllAtOneScale()
    {
        var options = new FigureOptions(FigureView.Side, 30, 30);
        var statureMm = PostureFigure.FittingMm(Library, options);
        Assert.All(Library, settled => Assert.Equal(statureMm, PostureFigure.Of(settled, options with { StatureMm = statureMm }, "").Frame.StatureMm, 1e-9));
    }

    [Fact]
    public void Of_FrameOfAnEarlierFigure_StaysInIt()
    {
        var options = new FigureOptions(FigureView.Side, 40, 40);
        var standing = PostureFigure.Of(SamplePostures.Of("two-feet"), options, "");
        Assert.Same(standing.Frame, PostureFigure.Of(SamplePostures.Of("squat"), options with { Frame = standing.Frame }, "").Frame);
    }

    [Fact]
    public void Of_EveryOption_AddsWhatItSays()
    {
        var plain = new FigureOptions(FigureView.Side, 40, 40) { ShowsFloor = false };
        int Count(FigureOptions options) => PostureFigure.Of(SamplePostures.Of("two-feet"), options, "").Scene.Shapes.Count;
        Assert.True(Count(plain with { ShowsFloor = true }) == Count(plain) + 1);
        Assert.True(Count(plain with { ShowsBase = true }) == Count(plain) + 1);
        Assert.True(Count(plain with { ShowsContacts = true }) == Count(plain) + 2);
        Assert.Contains(PostureFigure.Of(SamplePostures.Of("two-feet"), plain with { ShowsGravity = true }, "").Scene.Shapes, s => s is Line { IsDashed: true });
    }

    // By hand, from looking at both.
    [Theory]
    [InlineData("arabesque-hip", FigureView.Side)]
    [InlineData("lunge", FigureView.Side)]
    [InlineData("squat", FigureView.Side)]
    [InlineData("tripod", FigureView.Side)]
    [InlineData("tuck-sit", FigureView.Side)]
    [InlineData("pair-lean-out", FigureView.Side)]
    [InlineData("side-support", FigureView.Front)]
    [InlineData("stork", FigureView.Front)]
    public void ClearestView_LookedAtPosture_ShowsItsShape(string key, FigureView expected) =>
        Assert.Equal(expected, PostureFigure.ClearestView(SamplePostures.Of(key)));

    [Theory]
    [InlineData(4.9, 40, null)]
    [InlineData(40, double.NaN, null)]
    [InlineData(40, 40, 0.0)]
    public void Of_BoxOrScaleThatIsNone_Throws(double widthMm, double heightMm, double? statureMm) => Assert.Throws<ArgumentOutOfRangeException>(() =>
        PostureFigure.Of(SamplePostures.Of("two-feet"), new FigureOptions(FigureView.Side, widthMm, heightMm) { StatureMm = statureMm }, ""));

    [Theory]
    [InlineData("two-feet", FigureView.Front)]
    [InlineData("arabesque-hip", FigureView.Side)]
    [InlineData("tuck-sit", FigureView.ThreeQuarter)]
    [InlineData("tripod", FigureView.Side)]
    [InlineData("handstand-wall", FigureView.Side)]
    [InlineData("pair-lean-out", FigureView.ThreeQuarter)]
    public void Of_LookedAtPosture_MatchesApproved(string key, FigureView view) =>
        Snapshot.Match(SvgWriter.Write(PostureFigure.Of(SamplePostures.Of(key), Full(view, 40, 40), key).Scene), $"PostureFigureTests.{key}.{view}");

    private static IEnumerable<(SettledPosture Settled, FigureView View)> Each() => Library.SelectMany(settled => Views.Select(view => (settled, view)));

    private static FigureOptions Full(FigureView view, double widthMm, double heightMm) =>
        new(view, widthMm, heightMm) { ShowsBase = true, ShowsContacts = true, ShowsGravity = true };

    private static Posture Mirrored(Posture posture) => posture with
    {
        Pose = posture.Pose.Mirrored(),
        Contacts = [.. posture.Contacts.Select(Mirrored)],
        Wall = [.. posture.Wall.Select(Mirrored)],
        Partner = posture.Partner is { } p
            ? new Partner(p.Pose.Mirrored(), [.. p.Contacts.Select(Mirrored)], [.. p.Joins.Select(j => new Join(Mirrored(j.Own), Mirrored(j.On)))])
            : null,
    };

    private static Contact Mirrored(Contact contact) => contact with
    {
        Side = contact.Side switch { Side.Left => Side.Right, Side.Right => Side.Left, _ => Side.Middle },
    };

    private static void AssertAt((double X, double Y, double Depth) expected, (double XMm, double YMm, double DepthMm) at)
    {
        Assert.Equal(expected.X, at.XMm, 1e-9);
        Assert.Equal(expected.Y, at.YMm, 1e-9);
        Assert.Equal(expected.Depth, at.DepthMm, 1e-9);
    }

    // Control points lie outside their curves, so this box is never too small. Half of a stroke lies outside its run.
    private static (double LeftMm, double TopMm, double RightMm, double BottomMm) Bounds(Scene scene)
    {
        var points = scene.Shapes.SelectMany(shape => shape switch
        {
            Outline { Tone: Tone.Ground } => [],
            Outline o => o.Steps.Where(s => s.Kind != OutlineStepKind.Close).SelectMany(s => s.Kind == OutlineStepKind.Curve
                ? new[] { (s.XMm, s.YMm, o.StrokeMm / 2), (s.C1XMm, s.C1YMm, 0.0), (s.C2XMm, s.C2YMm, 0.0) } : [(s.XMm, s.YMm, o.StrokeMm / 2)]),
            Line l => [(l.X1Mm, l.Y1Mm, l.WidthMm / 2), (l.X2Mm, l.Y2Mm, l.WidthMm / 2)],
            Disc d => [(d.XMm, d.YMm, d.RadiusMm)],
            _ => new[] { (double.NaN, double.NaN, 0.0) },
        }).ToArray();
        return (points.Min(p => p.Item1 - p.Item3), points.Min(p => p.Item2 - p.Item3), points.Max(p => p.Item1 + p.Item3), points.Max(p => p.Item2 + p.Item3));
    }
}
