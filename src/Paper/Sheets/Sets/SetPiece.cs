using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>One thing a set asks of the pupil, with a label at its left where there is room for one.</summary>
internal abstract class SetPiece(SheetStyle style)
{
    /// <summary>White between what is printed beside a field and the field.</summary>
    protected const double BesideMm = 1.4;

    // White under a number over its field: its outline stands alone, so that a reader finds it.
    private const double UnderNumberMm = 1.2;

    protected SheetStyle Style => style;

    protected TypeScale Type => style.Type;

    /// <summary>The room for a number over its field.</summary>
    protected double OverMm => TypeScale.AscentMm(Type.SmallPt) + UnderNumberMm;

    /// <summary>What stands at its left; empty for nothing.</summary>
    public virtual string Label => "";

    /// <summary>The room its labels take, their distance included.</summary>
    public virtual double LabelMm => Label.Length == 0 ? 0 : Type.WidthMm(Label, Type.SmallPt) + 2.2;

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

    protected void LabelOn(Sketch sketch, double left, double middle, double labelMm)
    {
        if (labelMm > 0) sketch.Words(left - labelMm, middle + TypeScale.HalfCapitalMm(Type.SmallPt), Label, Type.SmallPt);
    }

    protected void NumberOn(Sketch sketch, double middleX, double fieldTop, string number, Tone tone, TextWeight weight) =>
        sketch.Words(middleX, fieldTop - UnderNumberMm, number, Type.SmallPt, tone, weight, TextAnchor.Middle);
}
