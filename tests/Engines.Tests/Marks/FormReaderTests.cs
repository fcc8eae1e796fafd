using CsCheck;
using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

public sealed class FormReaderTests
{
    private static readonly SheetLayout Form = FilledForm.Form;

    [Theory]
    [InlineData(3, 1, 0)]
    [InlineData(3.6, 0, 0)]
    [InlineData(6, 3, .1)]
    [InlineData(5, 200, .2)]
    [InlineData(13, 90, .05)]
    public void Read_FromAnyPlace_ExactWithAndWithoutCode(double pxPerMm, double turnDeg, double slant)
    {
        var photo = TestPhoto.Of(pxPerMm, turnDeg, slant: slant) with { NoiseGrey = 3 };
        var image = photo.Taken(FilledForm.Paper);
        FilledForm.AssertRead(FormReader.Read(image, Form, photo.Code(Form.Code)), photo);
        FilledForm.AssertRead(FormReader.Read(image, Form, null), photo);
    }

    [Fact]
    public void Read_TurnedAndSlantedByAnything_Exact() => Gen.Select(Gen.Double[0, 360], Gen.Double[-.15, .15], Gen.Double[3.2, 5.5]).Sample((turnDeg, slant, pxPerMm) =>
    {
        var photo = TestPhoto.Of(pxPerMm, turnDeg, slant: slant) with { NoiseGrey = 4 };
        FilledForm.AssertRead(FormReader.Read(photo.Taken(FilledForm.Paper), Form, photo.Code(Form.Code, 1)), photo);
    }, iter: 12);

    [Theory]
    [InlineData("noise")]
    [InlineData("blur")]
    [InlineData("hand's shadow")]
    [InlineData("uneven light")]
    [InlineData("dusk")]
    [InlineData("curl")]
    [InlineData("wide lens")]
    [InlineData("white desk")]
    public void Read_UnderAFault_Exact(string fault)
    {
        var photo = TestPhoto.Of(5.5, 7, slant: .08) with { NoiseGrey = 4 };
        photo = fault switch
        {
            "noise" => photo with { NoiseGrey = 18 },
            "blur" => photo with { BlurReachPx = 2 },
            "hand's shadow" => photo with { Light = (u, v) => u + .4 * v < .62 ? .9 : .5 },
            "uneven light" => photo with { Light = (u, v) => .95 - .6 * u * v },
            "dusk" => photo with { Light = (_, _) => .3 },
            // By 5 mm at the edges, and less so towards the top.
            "curl" => photo with { Bend = (x, y) => (2 * (y - 150) / 150 * Math.Pow((x - 105) / 105, 2), 4 * Math.Sin(x / 210 * Math.PI) * ((y - 20) / 150 - 1)) },
            "wide lens" => photo with { Bend = (x, y) => Barrel(x - 105, y - 148) },
            _ => photo with { DeskGrey = 240 },
        };
        FilledForm.AssertRead(FormReader.Read(photo.Taken(FilledForm.Paper), Form, photo.Code(Form.Code)), photo);
    }

    [Theory]
    [InlineData(150)]
    [InlineData(185)]
    public void Read_PhotocopyOfTwoTones_Exact(int threshold)
    {
        var photo = TestPhoto.Of(8, 1) with { NoiseGrey = 8, BlurReachPx = 1 };
        var image = photo.Taken(FilledForm.Paper);
        var copy = image with { Values = [.. image.Values.Select(v => (byte)(v < threshold ? 0 : 255))] };
        FilledForm.AssertRead(FormReader.Read(copy, Form, photo.Code(Form.Code)), photo);
    }

    [Theory]
    [InlineData(0, -1)]
    [InlineData(1, -1)]
    [InlineData(2, -1)]
    [InlineData(3, -1)]
    [InlineData(0, 2)]
    [InlineData(1, 6)]
    public void Read_AnchorsHidden_ExactFromTheRest(int first, int second)
    {
        var paper = FilledForm.Fresh();
        foreach (var hidden in (int[])[first, second])
        {
            if (hidden < 0) continue;
            var anchor = Form.Anchors[hidden];
            // A hole with the desk behind it, as round as a coin.
            for (var radius = 0.0; radius < 4; radius += .4)
                paper.Stroke([.. Enumerable.Range(0, 31).Select(i => (anchor.XMm + radius * Math.Cos(i * .21), anchor.YMm + radius * Math.Sin(i * .21)))], .6, .7);
        }
        var photo = TestPhoto.Of(5, 33, slant: .05) with { NoiseGrey = 4 };
        var image = photo.Taken(paper);
        FilledForm.AssertRead(FormReader.Read(image, Form, photo.Code(Form.Code)), photo);
        FilledForm.AssertRead(FormReader.Read(image, Form, null), photo);
    }

    [Fact]
    public void Read_TwoFormsOnAPage_EachByItsOwnCode()
    {
        // Two of 210 × 297 beside each other at .707 on a sheet lying across.
        var empty = PaperRaster.Printed(Form);
        PixelPoint Corner(double left, double x, double y) => new(left + x * 1050 + 12 * y, 60 + y * 1485 + 9 * x);
        TestPhoto At(double left) => new(2300, 1700) { Corners = [Corner(left, 0, 0), Corner(left, 1, 0), Corner(left, 1, 1), Corner(left, 0, 1)] };
        var (one, other) = (At(70), At(1130));
        var image = one.Taken([(FilledForm.Paper, one), (empty, other)]);
        FilledForm.AssertRead(FormReader.Read(image, Form, one.Code(Form.Code)), one);
        var second = FormReader.Read(image, Form, other.Code(Form.Code));
        Assert.Equal(PageFault.None, second.Fault);
        Assert.All(second.Fields, f => Assert.Equal(MarkVerdict.Empty, f.Verdict));
    }

    [Fact]
    public void Read_EveryWayToMarkAndNotToMark_AsMeant()
    {
        var paper = PaperRaster.Printed(Form);
        var rounds = Form.Fields.Where(f => f.Group.StartsWith("Level", StringComparison.Ordinal)).ToList();
        Pencil.CircleAround(paper, rounds[1]);
        Pencil.Tick(paper, rounds[8], dark: .7, widthMm: .3);
        Pencil.RubbedOut(paper, rounds[14]);
        paper.Stroke([(rounds[20].XMm + 2, rounds[20].YMm + 3), (rounds[20].XMm + 2.1, rounds[20].YMm + 3)], .3, .6);
        var photo = TestPhoto.Of(6, 2) with { NoiseGrey = 4 };
        var read = FormReader.Read(photo.Taken(paper), Form, photo.Code(Form.Code)).Fields.ToDictionary(f => f.Key);
        Assert.Equal(MarkVerdict.Marked, read[rounds[1].Key].Verdict);
        Assert.Equal(MarkVerdict.Marked, read[rounds[8].Key].Verdict);
        Assert.Equal(MarkVerdict.Empty, read[rounds[14].Key].Verdict);
        Assert.Equal(MarkVerdict.Empty, read[rounds[20].Key].Verdict);
        Assert.Equal(2, read.Values.Count(f => f.Verdict != MarkVerdict.Empty));
    }

    [Fact]
    public void Read_AllFieldsFilled_AllMarked()
    {
        // The outline's own shade is learnt from the fields of the page: it must not be learnt from what fills them.
        var paper = PaperRaster.Printed(Form);
        foreach (var field in Form.Fields) Pencil.Fill(paper, field);
        var photo = TestPhoto.Of(5, 2) with { NoiseGrey = 4 };
        var reading = FormReader.Read(photo.Taken(paper), Form, photo.Code(Form.Code));
        Assert.Equal(PageFault.None, reading.Fault);
        Assert.All(reading.Fields, f => Assert.Equal(MarkVerdict.Marked, f.Verdict));
    }

    [Fact]
    public void Read_AFieldCovered_NotSaidToBeEmpty()
    {
        var paper = PaperRaster.Printed(Form);
        var field = Form.Fields[30];
        // A scrap of white paper with its edge just beyond the field.
        paper.Square(field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2, field.WidthMm + 1, 0);
        var photo = TestPhoto.Of(5, 2) with { NoiseGrey = 4 };
        var reading = FormReader.Read(photo.Taken(paper), Form, photo.Code(Form.Code));
        Assert.Equal([field.Key], reading.Fields.Where(f => f.Verdict != MarkVerdict.Empty).Select(f => f.Key));
        Assert.Equal(MarkVerdict.Doubtful, reading.Fields[30].Verdict);
    }

    private static (double, double) Barrel(double x, double y)
    {
        var square = (x * x + y * y) / (180.0 * 180);
        return (-.03 * square * x, -.03 * square * y);
    }
}
