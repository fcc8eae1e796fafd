using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>One thing a set asks of the pupil, with a label at its left where there is room for one.</summary>
internal abstract class SetPiece(SheetStyle style)
{
    private const double LeastUnderNumberMm = 1.2;

    /// <summary>What stands at its left; empty for nothing.</summary>
    public string Label { get; init; } = "";

    /// <summary>The sign before its label, where signs are printed.</summary>
    public Sign LabelSign { get; init; }

    protected SheetStyle Style => style;

    protected TypeScale Type => style.Type;

    /// <summary>White between a field and what is printed beside it.</summary>
    protected double BesideMm => Type.SmallPt * 0.13;

    /// <summary>White between a label and what it is about.</summary>
    protected double AfterLabelMm => Type.SmallPt * 0.2;

    protected double SignMm => Signs.SizeMm(Type.SmallPt);

    // White under a number over its field: its outline stands alone, so that a reader finds it.
    private double UnderNumberMm => Math.Max(LeastUnderNumberMm, Type.SmallPt * 0.1);

    /// <summary>The room for a number over its field.</summary>
    protected double OverMm => TypeScale.AscentMm(Type.SmallPt) + UnderNumberMm;

    /// <summary>The room its labels take, their distance included.</summary>
    public virtual double LabelMm => Label.Length == 0 ? 0 : LabelWidthMm(LabelSign, Label);

    /// <summary>The width it does well with.</summary>
    public abstract double WidthMm { get; }

    public abstract double HeightMm(double widthMm);

    /// <summary>Draws it.</summary>
    /// <param name="sketch">Where to.</param>
    /// <param name="left">Its left edge, after the label.</param>
    /// <param name="top">Its top edge.</param>
    /// <param name="width">The room it has.</param>
    /// <param name="labelMm">The room for labels at the left of its left edge; 0 for none.</param>
    public abstract void DrawOn(Sketch sketch, double left, double top, double width, double labelMm);

    protected double LabelWidthMm(Sign sign, string label) =>
        Type.WidthMm(label, Type.SmallPt) + AfterLabelMm + (HasSign(sign) ? SignMm + Signs.AfterMm(Type.SmallPt) : 0);

    protected void LabelOn(Sketch sketch, double left, double middle, double labelMm)
    {
        if (labelMm > 0) LabelOn(sketch, LabelSign, Label, left - labelMm, middle);
    }

    protected void LabelOn(Sketch sketch, Sign sign, string label, double left, double middle)
    {
        if (label.Length == 0) return;
        var hasSign = HasSign(sign);
        if (hasSign) Signs.Draw(sketch, sign, left, middle, SignMm);
        sketch.Words(left + (hasSign ? SignMm + Signs.AfterMm(Type.SmallPt) : 0), middle + TypeScale.HalfCapitalMm(Type.SmallPt), label, Type.SmallPt);
    }

    protected void NumberOn(Sketch sketch, double middleX, double fieldTop, string number, Tone tone, TextWeight weight) =>
        sketch.Words(middleX, fieldTop - UnderNumberMm, number, Type.SmallPt, tone, weight, TextAnchor.Middle);

    // What a trial's two rows mean is always drawn; the rest where it is asked for.
    private bool HasSign(Sign sign) => sign is Sign.Tick or Sign.Ring || (style.HasSigns && sign != Sign.None);
}
