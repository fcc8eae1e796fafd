using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets;

/// <summary>Lays the pages of sheets onto the sides of the paper.</summary>
internal sealed class Sides(PaperOptions options, string emptyDescription)
{
    private const double CutFromMm = 6;
    private const double CutMm = 4;

    /// <summary>The pages of the document, sheet by sheet.</summary>
    public IReadOnlyList<PrintedPage> Of(IEnumerable<IReadOnlyList<PrintedPage>> sheets)
    {
        if (!options.IsTwoUp) return [.. sheets.SelectMany(s => options.IsTwoSided && s.Count % 2 == 1 ? [.. s, Empty(s[0].Scene)] : s)];
        if (!options.IsTwoSided) return [.. sheets.SelectMany(s => s).Chunk(2).Select(pair => Beside(pair[0], pair.Length > 1 ? pair[1] : null))];
        return [.. sheets.Chunk(2).SelectMany(pair => Turned(pair[0], pair.Length > 1 ? pair[1] : []))];
    }

    // Two sheets, one on each half. Turned over its short edge, the back's right half lies behind the front's left.
    private IEnumerable<PrintedPage> Turned(IReadOnlyList<PrintedPage> left, IReadOnlyList<PrintedPage> right)
    {
        var count = Math.Max(left.Count, right.Count);
        for (var i = 0; i < count + count % 2; i++)
        {
            var (a, b) = (left.ElementAtOrDefault(i), right.ElementAtOrDefault(i));
            yield return i % 2 == 0 ? Beside(a, b) : Beside(b, a);
        }
    }

    private PrintedPage Empty(Scene like) => new(new Scene(like.WidthMm, like.HeightMm, [], emptyDescription), []);

    private PrintedPage Beside(PrintedPage? left, PrintedPage? right)
    {
        var paper = PageFrame.Of(options.Size);
        var (widthMm, heightMm) = (paper.HeightMm, paper.WidthMm);
        PrintedPage?[] halves = [left, right];
        // Where to cut: near the edge, as far as desk printers reach.
        var shapes = new List<Shape>(new[] { CutFromMm, heightMm - CutFromMm - CutMm }.Select(y => new Line(widthMm / 2, y, widthMm / 2, y + CutMm, Sketch.HairlineMm, Tone.Faint)));
        var forms = new List<PrintedForm>();
        for (var i = 0; i < halves.Length; i++)
        {
            if (halves[i] is not { } half) continue;
            var start = i * widthMm / 2;
            shapes.AddRange(half.Scene.Shapes.Select(s => ShapeMove.By(ShapeScale.By(s, PageFrame.TwoUpFraction), start, 0)));
            forms.AddRange(half.Forms.Select(f => f with { LeftMm = start, ScaleFraction = PageFrame.TwoUpFraction }));
        }
        var said = halves.OfType<PrintedPage>().Select(h => h.Scene.Description).DefaultIfEmpty(emptyDescription);
        return new PrintedPage(new Scene(widthMm, heightMm, shapes, string.Join(' ', said)), forms);
    }
}
