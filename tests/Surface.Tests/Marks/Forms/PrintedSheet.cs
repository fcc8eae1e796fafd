using Slantwise.Engines.Marks;

namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>A form on the paper it is printed on.</summary>
/// <param name="Form">The form as the reader is told it.</param>
/// <param name="Placed">The same where and as large as it stands on the paper.</param>
/// <param name="WidthMm">The paper.</param>
/// <param name="HeightMm">The paper.</param>
/// <param name="CodeModuleCount">How many modules the code's side has.</param>
/// <param name="Print">The printed paper, at so many pixels a millimetre.</param>
internal sealed record PrintedSheet(SheetLayout Form, SheetLayout Placed, double WidthMm, double HeightMm, int CodeModuleCount, Func<double, Leaf> Print)
{
    /// <summary>Whether a second form stands beside it.</summary>
    public bool IsPair => WidthMm > 1.5 * Placed.WidthMm;

    /// <summary>A plain form on its own, or now and then the left of two on paper laid across.</summary>
    public static PrintedSheet Plain(ulong seed)
    {
        var form = PlainForm.Of(seed);
        var isPair = new Luck(seed, 1).Happens(.25);
        var placed = isPair ? PlacedAt(form, 0, 0, Math.Sqrt(.5)) : form;
        return new(form, placed, isPair ? 2 * placed.WidthMm : placed.WidthMm, placed.HeightMm, Forms.Print.CodeModuleCount, pxPerMm => Forms.Print.Of(placed, seed, pxPerMm, isPair));
    }

    /// <summary>A form's places on paper.</summary>
    public static SheetLayout PlacedAt(SheetLayout form, double leftMm, double topMm, double scale) => new(
        form.WidthMm * scale, form.HeightMm * scale,
        [.. form.Anchors.Select(a => a with { XMm = leftMm + a.XMm * scale, YMm = topMm + a.YMm * scale, SizeMm = a.SizeMm * scale })],
        new(leftMm + form.Code.XMm * scale, topMm + form.Code.YMm * scale, form.Code.SizeMm * scale),
        [.. form.Fields.Select(f => f with { XMm = leftMm + f.XMm * scale, YMm = topMm + f.YMm * scale, WidthMm = f.WidthMm * scale, HeightMm = f.HeightMm * scale })],
        [.. form.Writings.Select(w => w with { XMm = leftMm + w.XMm * scale, YMm = topMm + w.YMm * scale, WidthMm = w.WidthMm * scale, HeightMm = w.HeightMm * scale })]);
}
