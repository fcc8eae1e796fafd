using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Slantwise.Engines.Drawing;
using Snapshooter.Xunit3;

namespace Slantwise.Engines.Tests.Drawing;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // Any char at all, halves of surrogate pairs and controls among them.
    private static readonly Gen<string> AnyText = Gen.Char.Array[0, 12].Select(chars => new string(chars));

    private static readonly Gen<double> Mm = Gen.Double[-500, 500];
    private static readonly Gen<double> SizeMm = Gen.Double[0.01, 300];
    private static readonly Gen<Tone> AnyTone = Gen.Enum<Tone>();

    private static readonly Gen<Shape> AnyShape = Gen.OneOf<Shape>(
        Gen.Select(Mm, Mm, Mm, Mm, SizeMm, AnyTone, Gen.Bool, (a, b, c, d, w, t, dashed) => (Shape)new Line(a, b, c, d, w, t, dashed)),
        Gen.Select(Mm, Mm, SizeMm, SizeMm, AnyTone, Gen.Double[0, 2], Gen.Double[0, 3], (x, y, w, h, t, s, r) => (Shape)new Box(x, y, w, h, t, s, r)),
        Gen.Select(Mm, Mm, SizeMm, AnyTone, Gen.Double[0, 2], (x, y, r, t, s) => (Shape)new Disc(x, y, r, t, s)),
        Gen.Select(Mm, Mm, Mm, Mm, AnyTone, Gen.Double[0, 2], (a, b, c, d, t, s) =>
            (Shape)new Outline([new(OutlineStepKind.Move, a, b), new(OutlineStepKind.Curve, c, d, a, c, b, d), new(OutlineStepKind.Close)], t, s)),
        Gen.Select(Mm, Mm, AnyText, Gen.Double[1, 90], AnyTone, Gen.Enum<TextAnchor>(), Gen.Enum<TextWeight>(), (x, y, s, pt, t, a, w) =>
            (Shape)new Text(x, y, s, pt, t, a, w)));

    private static readonly Gen<Scene> AnyScene =
        Gen.Select(SizeMm, SizeMm, AnyShape.List[0, 12], AnyText, (w, h, shapes, d) => new Scene(w, h, shapes, d));

    [Fact]
    public void Write_ShapesAlone_AreThoseOfTheScene() => AnyScene.Sample(scene =>
    {
        var whole = SvgWriter.Write(scene);
        Assert.EndsWith(SvgWriter.Write(scene.Shapes) + "\n</svg>", whole);
        Assert.Equal(scene.Shapes.Count, XElement.Parse($"<svg>{SvgWriter.Write(scene.Shapes)}</svg>").Elements().Count());
    });

    [Fact]
    public void Write_AnyScene_IsWellFormedAndHoldsEachShapeOnceInOrder() => AnyScene.Sample(scene =>
    {
        var svg = XElement.Parse(SvgWriter.Write(scene));
        var drawn = svg.Elements().Select(e => e.Name.LocalName).Where(n => n is not ("title" or "desc"));
        Assert.Equal(scene.Shapes.Select(NameOf), drawn);
    });

    [Fact]
    public void Write_AnyText_IsReadBackAsWritten() => AnyText.Sample(content =>
    {
        var svg = XElement.Parse(
            SvgWriter.Write(new Scene(10, 10, [new Text(1, 1, content, 12, Tone.Ink)], "")), LoadOptions.PreserveWhitespace);
        Assert.Equal(WithoutWhatXmlForbids(content), svg.Element(Svg + "text")!.Value);
    });

    [Fact]
    public void Write_AnyScene_NumbersAreInvariantWhateverTheCulture() => AnyScene.Sample(scene =>
    {
        var invariant = SvgWriter.Write(scene);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("es-ES");
            Assert.Equal(invariant, SvgWriter.Write(scene));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    });

    [Fact]
    public void Write_AnyTone_NamesThePagesColourAndThePrintedOne()
    {
        foreach (var tone in Enum.GetValues<Tone>())
        {
            var svg = XElement.Parse(SvgWriter.Write(new Scene(10, 10, [new Disc(5, 5, 2, tone)], "")));
            Assert.Matches(@"^var\(--tone-[a-z]+(-[a-z]+)*, #[0-9a-f]{6}\)$", svg.Element(Svg + "circle")!.Attribute("fill")!.Value);
        }
    }

    [Fact]
    public void Write_Description_BecomesTitleAndRest()
    {
        var svg = XElement.Parse(SvgWriter.Write(new Scene(10, 10, [], "Seven tries <of 2>. Five worked. Two did not.")));
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal("Seven tries <of 2>.", svg.Element(Svg + "title")!.Value);
        Assert.Equal("Five worked. Two did not.", svg.Element(Svg + "desc")!.Value);
    }

    [Fact]
    public void Write_NoDescription_IsHiddenFromReaders()
    {
        var svg = XElement.Parse(SvgWriter.Write(new Scene(10, 10, [], "")));
        Assert.Equal("true", svg.Attribute("aria-hidden")!.Value);
        Assert.Null(svg.Attribute("role"));
    }

    [Fact]
    public void Write_OutlineWithAnInside_IsFilledOverItsStroke()
    {
        var edged = new Pen().MoveTo(1, 1).LineTo(9, 1).LineTo(5, 9).Close().Stroke(1, Tone.Ink) with { Inside = Tone.Ground };
        var path = XElement.Parse(SvgWriter.Write(new Scene(10, 10, [edged], ""))).Element(Svg + "path")!;
        Assert.Equal("stroke", path.Attribute("paint-order")!.Value);
        Assert.StartsWith("var(--tone-ground,", path.Attribute("fill")!.Value);
        Assert.StartsWith("var(--tone-ink,", path.Attribute("stroke")!.Value);
    }

    [Theory]
    [InlineData(0, 10, 1)]
    [InlineData(10, double.NaN, 1)]
    [InlineData(10, 10, double.PositiveInfinity)]
    public void Write_NumberThatCannotBeDrawn_Throws(double widthMm, double heightMm, double xMm) =>
        Assert.Throws<ArgumentException>(() => SvgWriter.Write(new Scene(widthMm, heightMm, [new Disc(xMm, 1, 1, Tone.Ink)], "")));

    [Fact]
    public void Write_SmallScene_MatchesApproved() => Snapshot.Match(SvgWriter.Write(new Scene(60, 40,
    [
        new Box(0, 0, 60, 40, Tone.Ground),
        new Box(5, 5, 50, 30, Tone.Faint, 0.25, 2),
        new Line(5, 20, 55, 20.12345, 0.3, Tone.Muted, IsDashed: true),
        new Disc(30, 20, 4, Tone.AccentSoft),
        new Disc(30, 20, 4, Tone.Accent, 0.4),
        new Pen().MoveTo(28, 20).LineTo(29.5, 21.5).CurveTo(30, 20, 31, 19, 32, 18).Stroke(0.5, Tone.Ink),
        new Pen().MoveTo(50, 30).LineTo(53, 30).LineTo(51.5, 27).Close().Fill(Tone.Caution),
        new Text(30, 33, "Held 4 s & steady", 12, Tone.Ink, TextAnchor.Middle, TextWeight.Bold),
        new Text(6, 9, "1 < 2", 11, Tone.Muted),
    ], "A tick in a ring. It marks a try that worked.")));

    private static string NameOf(Shape shape) => shape switch
    {
        Line => "line",
        Box => "rect",
        Disc => "circle",
        Outline => "path",
        _ => "text",
    };

    // A second, plain statement of [XML10] production 2 over UTF-16.
    private static string WithoutWhatXmlForbids(string text)
    {
        var allowed = "";
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1])) allowed += text.Substring(i++, 2);
            else if (char.IsSurrogate(text[i]) || text[i] is '\uFFFE' or '\uFFFF' || (text[i] < ' ' && text[i] is not ('\t' or '\n' or '\r'))) allowed += '\uFFFD';
            else allowed += text[i];
        }
        return allowed;
    }
}
