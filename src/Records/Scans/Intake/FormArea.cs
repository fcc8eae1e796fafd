using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A rectangle on a form, in millimetres from its top left corner.</summary>
/// <param name="XMm">Its left edge.</param>
/// <param name="YMm">Its top edge.</param>
/// <param name="WidthMm">Its width.</param>
/// <param name="HeightMm">Its height.</param>
public readonly record struct FormArea(double XMm, double YMm, double WidthMm, double HeightMm)
{
    /// <summary>The smallest that holds all of these fields.</summary>
    /// <param name="fields">One or more.</param>
    /// <exception cref="ArgumentException">No field.</exception>
    public static FormArea Around(IReadOnlyCollection<MarkField> fields)
    {
        if (fields.Count == 0) throw new ArgumentException("There is no field to put an area around.", nameof(fields));
        var (left, top) = (fields.Min(f => f.XMm), fields.Min(f => f.YMm));
        return new FormArea(left, top, fields.Max(f => f.XMm + f.WidthMm) - left, fields.Max(f => f.YMm + f.HeightMm) - top);
    }

    /// <summary>The area of a written field.</summary>
    /// <param name="field">The field.</param>
    public static FormArea Of(WrittenField field) => new(field.XMm, field.YMm, field.WidthMm, field.HeightMm);

    /// <summary>The area with a margin on every side; a negative one cuts off.</summary>
    /// <param name="marginMm">How much.</param>
    public FormArea Widened(double marginMm) =>
        new(XMm - marginMm, YMm - marginMm, Math.Max(0, WidthMm + 2 * marginMm), Math.Max(0, HeightMm + 2 * marginMm));
}
