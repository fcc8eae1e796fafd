using Slantwise.Engines.Marks;

namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>Prints a plain form: outlines, black squares, something like a code, and clutter that stands for numbers and words beside the fields.</summary>
internal static class Print
{
    public const int CodeModuleCount = 25;

    private const double OutlineMm = .3;

    /// <summary>One form on its own paper, or the left of two on paper laid across.</summary>
    public static Leaf Of(SheetLayout form, ulong seed, double pxPerMm, bool isPair)
    {
        var luck = new Luck(seed, 12);
        var paper = new Leaf(isPair ? 2 * form.WidthMm : form.WidthMm, form.HeightMm, pxPerMm, (byte)luck.Between(225, 250));
        var scale = form.WidthMm / 210;
        Draw(paper, form, default, scale, seed);
        if (isPair) Draw(paper, form, new(form.WidthMm, 0), scale, seed + 1);
        return paper;
    }

    private static void Draw(Leaf paper, SheetLayout form, Point at, double scale, ulong seed)
    {
        var luck = new Luck(seed, 13);
        var black = new Ink(luck.Between(.85, .95));
        var grey = new Ink(luck.Between(.55, .75));
        foreach (var anchor in form.Anchors)
        {
            Square(paper, at + new Point(anchor.XMm, anchor.YMm), anchor.SizeMm, black);
            if (anchor.IsHollow) White(paper, at + new Point(anchor.XMm, anchor.YMm), anchor.SizeMm / 2);
        }
        foreach (var field in form.Fields)
        {
            var middle = at + new Point(field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
            paper.Draw([field.IsRound
                ? Stroke.Ellipse(middle, field.WidthMm / 2, field.HeightMm / 2, OutlineMm * scale)
                : Stroke.Rectangle(at.XMm + field.XMm, at.YMm + field.YMm, field.WidthMm, field.HeightMm, OutlineMm * scale)], grey, 0);
            Words(paper, middle - new Point(.8 * scale, field.HeightMm / 2 + 3.2 * scale), 1.6 * scale, 2.2 * scale, luck, black);
        }
        foreach (var writing in form.Writings)
        {
            paper.Draw([Stroke.Rectangle(at.XMm + writing.XMm, at.YMm + writing.YMm, writing.WidthMm, writing.HeightMm, .2 * scale)], grey, 0);
            Words(paper, at + new Point(writing.XMm, writing.YMm - 3.4 * scale), 26 * scale, 2.4 * scale, luck, black);
        }
        for (var line = 0; line < 5; line++) Words(paper, at + new Point(24 * scale, (18 + 5 * line) * scale), luck.Between(60, 150) * scale, 2.8 * scale, luck, black);
        Code(paper, at + new Point(form.Code.XMm, form.Code.YMm), form.Code.SizeMm, luck, black);
    }

    private static void Square(Leaf paper, Point middle, double sizeMm, Ink ink) =>
        paper.Fill(middle.XMm - sizeMm / 2, middle.YMm - sizeMm / 2, sizeMm, sizeMm, ink);

    private static void White(Leaf paper, Point middle, double sizeMm)
    {
        var px = paper.PxPerMm;
        var white = paper.Values[0];
        for (var y = (int)Math.Round((middle.YMm - sizeMm / 2) * px); y < (int)Math.Round((middle.YMm + sizeMm / 2) * px); y++)
            for (var x = (int)Math.Round((middle.XMm - sizeMm / 2) * px); x < (int)Math.Round((middle.XMm + sizeMm / 2) * px); x++)
                paper.Values[y * paper.WidthPx + x] = white;
    }

    // Letters as a reader sees them that cannot read: upright, level and slanting strokes of a height.
    private static void Words(Leaf paper, Point topLeft, double widthMm, double heightMm, Luck luck, Ink ink)
    {
        var strokes = new List<Stroke>();
        for (var x = 0.0; x < widthMm - heightMm * .3; x += heightMm * (luck.Happens(.15) ? 1.1 : .75))
            for (var i = 0; i < 3; i++)
            {
                var from = new Point(x + luck.Between(0, .5) * heightMm, luck.Between(0, 1) * heightMm);
                var to = new Point(x + luck.Between(0, .5) * heightMm, luck.Between(0, 1) * heightMm);
                strokes.Add(new([topLeft + from, topLeft + to], heightMm * .12));
            }
        if (strokes.Count > 0) paper.Draw(strokes, ink, 0);
    }

    private static void Code(Leaf paper, Point at, double sizeMm, Luck luck, Ink ink)
    {
        var module = sizeMm / CodeModuleCount;
        for (var row = 0; row < CodeModuleCount; row++)
            for (var column = 0; column < CodeModuleCount; column++)
            {
                var dark = InFinder(row, column) ?? luck.Happens(.5);
                if (dark) paper.Fill(at.XMm + column * module, at.YMm + row * module, module, module, ink);
            }
    }

    // Three finder patterns: a dark square of 3 in a light ring in a dark ring of 7, with a light margin.
    private static bool? InFinder(int row, int column)
    {
        const int Last = CodeModuleCount - 1;
        foreach (var (r, c) in new[] { (row, column), (row, Last - column), (Last - row, column) })
        {
            if (r > 7 || c > 7) continue;
            return Math.Max(Math.Abs(r - 3), Math.Abs(c - 3)) is <= 1 or 3;
        }
        return null;
    }
}
