using System.Globalization;
using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Records.Halls;
using Slantwise.Records.Halls.Drawing;
using static Slantwise.Records.Tests.Halls.SampleHall;

namespace Slantwise.Records.Tests.Halls.Drawing;

public sealed class HallDrawingTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");

    [Fact]
    public void Of_AnyLayout_LengthsInTheSceneAreMetresTimesTheScale() => Any.Sample(s =>
    {
        var laid = SpaceProposal.LaidOut(s.Hall, s.Layout, 6, [new(Guid.Empty, "t", 1.3, FallGround.Posture, 1)]);
        var drawing = Draw(s.Hall, laid, HallBox.Screen);
        var k = drawing.Scale.MmPerM;
        for (var m = 0; m < laid.Mats.Count; m++)
        {
            var (mat, box) = (laid.Mats[m], drawing.Mats[m].Body.OfType<Box>().First());
            var (w, h) = mat.IsTurned ? (1.0, 2.0) : (2.0, 1.0);
            Assert.Equal((w * k, h * k), (box.WidthMm, box.HeightMm), Near);
            // Between two mats: metres times the scale, up is towards the back wall.
            var first = drawing.Mats[0].Body.OfType<Box>().First();
            Assert.Equal(
                ((mat.XM - laid.Mats[0].XM) * k, -(mat.YM - laid.Mats[0].YM) * k),
                (box.XMm + box.WidthMm / 2 - first.XMm - first.WidthMm / 2, box.YMm + box.HeightMm / 2 - first.YMm - first.HeightMm / 2), Near);
            var circle = drawing.Mats[m].Body.OfType<Outline>().First().Steps.Where(p => p.Kind == OutlineStepKind.Move);
            Assert.All(circle, p => Assert.Equal(mat.FallM * k, Math.Sqrt(Math.Pow(p.XMm - drawing.Scale.XMm(mat.XM), 2) + Math.Pow(p.YMm - drawing.Scale.YMm(mat.YM), 2)), 1e-6));
            // What stays clear ends at the walls.
            if (laid.ClearM > 0) Assert.Equal(
                (Math.Min(s.Hall.WidthM, mat.XM + (w + laid.ClearM) / 2) - Math.Max(0, mat.XM - (w + laid.ClearM) / 2)) * k, ((Box)drawing.Mats[m].Zone[0]).WidthMm, 1e-6);
        }
        var floor = (Box)drawing.Floor[0];
        Assert.Equal((s.Hall.WidthM * k, s.Hall.DepthM * k), (floor.WidthMm, floor.HeightMm), Near);
        // The scale bar: as many metres as its words say.
        var said = double.Parse(drawing.Foot.OfType<Text>().First().Content.Split(' ')[0], English);
        Assert.Equal(said * k, drawing.Foot.OfType<Box>().First(b => b.StrokeMm > 0).WidthMm, 1e-6);
    }, iter: 15);

    [Fact]
    public void Of_AnyLayout_StaysOnThePageWithWordsLargeEnough() => Any.Sample(s =>
    {
        var laid = SpaceProposal.LaidOut(s.Hall, s.Layout, 5, []);
        foreach (var box in new[] { HallBox.Screen, HallBox.Card, new HallBox(180, 120, 11) })
        {
            var drawing = Draw(s.Hall, laid, box);
            Assert.True(drawing.HeightMm <= box.MostHeightMm + 1e-6 && drawing.WidthMm == box.WidthMm);
            Assert.All(drawing.Scene.Shapes.OfType<Text>(), t => Assert.True(t.SizePt >= box.WordsPt - 1e-9 && t.Content.Length > 0));
            Assert.All(drawing.Scene.Shapes.OfType<Box>(), b => Assert.True(b.XMm >= -0.01 && b.YMm >= -0.01 && b.XMm + b.WidthMm <= drawing.WidthMm + 0.01 && b.YMm + b.HeightMm <= drawing.HeightMm + 0.01));
            Assert.True(SvgWriter.Write(drawing.Scene).Length > 500);
        }
    }, iter: 8);

    [Fact]
    public void Of_AClashAndAHiddenMat_MarksBothWithASign()
    {
        var hall = SampleHall.Of(20, 10, new HallThing("Pillar", 9, 4.5, 1, 1, true));
        var calm = Layout(1, 1, Mat(5, 8), Mat(12, 2)) with { TeacherXM = 1, TeacherYM = 5 };
        Assert.All(Draw(hall, calm, HallBox.Screen).Mats, m => Assert.Empty(m.Signs));
        // By hand: mat 1 half a metre from mat 3; mat 2 straight behind the pillar.
        var drawing = Draw(hall, calm with { Mats = [Mat(5, 8), Mat(15, 5), Mat(7.5, 8)] }, HallBox.Screen);
        Assert.Contains(drawing.Mats[0].Signs, s => s is Outline { Tone: Tone.Caution });
        Assert.Contains(drawing.Mats[2].Signs, s => s is Outline { Tone: Tone.Caution });
        Assert.DoesNotContain(drawing.Mats[1].Signs, s => s is Outline { Tone: Tone.Caution });
        // The crossed eye is ink, and the hidden mat is hatched: neither needs a colour.
        Assert.Contains(drawing.Mats[1].Signs, s => s is Line { Tone: Tone.Ink });
        Assert.Contains(drawing.Mats[1].Body, s => s is Line);
        Assert.DoesNotContain(drawing.Mats[0].Body, s => s is Line);
        // The gap between the two mats is drawn where it is: half a metre at y = 8.
        var gap = Assert.Single(drawing.Above.OfType<Line>(), l => l.Tone == Tone.Caution);
        Assert.Equal(0.5 * drawing.Scale.MmPerM, Math.Abs(gap.X2Mm - gap.X1Mm), 1e-6);
        Assert.Equal(drawing.Scale.YMm(8), gap.Y1Mm, 1e-6);
        Assert.Contains("3 mats; too near: 1.", drawing.Description);
        Assert.Contains("You do not see mat 2", drawing.Description);
    }

    [Theory]
    [InlineData("en", "falling circle", "too near", "hides the view")]
    [InlineData("es", "círculo de caída", "demasiado cerca", "tapa la vista")]
    public void Of_EitherLanguage_ExplainsOnlyWhatIsThere(string language, string circle, string tooNear, string hides)
    {
        var culture = CultureInfo.GetCultureInfo(language);
        List<string> Legend(SchoolHall hall, HallLayout layout) =>
            [.. HallDrawing.Of(hall, layout, HallReading.Of(hall, layout, 20, culture), HallBox.Screen, culture).Foot.OfType<Text>().Select(t => t.Content)];
        var plain = Legend(SampleHall.Of(20, 10), Layout(1, 1, Mat(5, 5)));
        Assert.DoesNotContain(circle, plain);
        Assert.DoesNotContain(tooNear, plain);
        var all = Legend(SampleHall.Of(20, 10, new HallThing("", 10, 0, 1, 1, true)), Layout(1, 1, Mat(5, 5, fallM: 1), Mat(6, 5)));
        Assert.Contains(circle, all);
        Assert.Contains(tooNear, all);
        Assert.Contains(hides, all);
    }

    [Fact]
    public void Of_EmptyHall_DrawsItAlone()
    {
        var drawing = HallDrawing.Of(SampleHall.Of(20, 10), HallBox.Card, English);
        Assert.Empty(drawing.Mats);
        Assert.Equal("Hall, 20 m wide and 10 m deep, seen from above, drawn to scale, the front wall below. Things in it: 0.", drawing.Description);
    }

    [Theory]
    [InlineData(59, 100, 9)]
    [InlineData(100, 59, 9)]
    [InlineData(100, 100, 7)]
    public void Of_TooSmallABox_IsRefused(double widthMm, double heightMm, double pt) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => HallDrawing.Of(SampleHall.Of(20, 10), new HallBox(widthMm, heightMm, pt), English));

    private static bool Near((double, double) a, (double, double) b) => Math.Abs(a.Item1 - b.Item1) < 1e-6 && Math.Abs(a.Item2 - b.Item2) < 1e-6;

    private static HallDrawing Draw(SchoolHall hall, HallLayout layout, HallBox box) => HallDrawing.Of(hall, layout, HallReading.Of(hall, layout, 20, English), box, English);
}
