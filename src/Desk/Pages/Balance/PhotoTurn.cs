using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>From a picture's own points to where they are on the screen, the picture turned by quarters, and back.</summary>
/// <param name="WidthPx">Of the picture as it is.</param>
/// <param name="HeightPx">Of the picture as it is.</param>
/// <param name="QuarterCount">Quarter turns clockwise.</param>
public readonly record struct PhotoTurn(double WidthPx, double HeightPx, int QuarterCount)
{
    private bool IsAcross => (QuarterCount & 1) == 1;

    /// <summary>The width on the screen, in the picture's points.</summary>
    public double ShownWidthPx => IsAcross ? HeightPx : WidthPx;

    /// <summary>The height on the screen, in the picture's points.</summary>
    public double ShownHeightPx => IsAcross ? WidthPx : HeightPx;

    /// <summary>Where a point of the picture is shown.</summary>
    public PointPx Shown(PointPx at) => (QuarterCount & 3) switch
    {
        0 => at,
        1 => new(HeightPx - at.YPx, at.XPx),
        2 => new(WidthPx - at.XPx, HeightPx - at.YPx),
        _ => new(at.YPx, WidthPx - at.XPx),
    };

    /// <summary>Which point of the picture is shown there.</summary>
    public PointPx Of(PointPx shown) => (QuarterCount & 3) switch
    {
        0 => shown,
        1 => new(shown.YPx, HeightPx - shown.XPx),
        2 => new(WidthPx - shown.XPx, HeightPx - shown.YPx),
        _ => new(WidthPx - shown.YPx, shown.XPx),
    };
}
