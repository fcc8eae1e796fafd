using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>What a child writes with: how wide and how dark it draws, as the grey of a camera sees it.</summary>
/// <remarks>Widths and darkness are measured by eye on a few scans; no source.</remarks>
internal sealed record MarkPen(string Name, double ThinMm, double WideMm, double PaleFraction, double DarkFraction, double GrainFraction, bool IsPencil = false)
{
    /// <summary>Pens of a usual pencil case.</summary>
    public static IReadOnlyList<MarkPen> Usual { get; } =
    [
        new("pencil, dark", .45, .8, .55, .8, .35, true),
        new("pencil, light", .35, .6, .36, .5, .35, true),
        new("biro, blue", .35, .55, .55, .75, .05),
        new("biro, black", .35, .55, .75, .92, .05),
        new("felt tip", .9, 1.6, .6, .92, 0),
        new("wax crayon", 1.4, 2.4, .5, .8, .45),
    ];

    /// <summary>A pencil that hardly touches the paper.</summary>
    public static MarkPen Faint { get; } = new("pencil, faint", .3, .5, .18, .34, .4, true);

    public Ink InkOf(Luck luck) => new(luck.Between(PaleFraction, DarkFraction), GrainFraction);

    public double WidthOf(Luck luck) => luck.Between(ThinMm, WideMm);
}
