using Slantwise.Engines.Drawing.Figures;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures.Figures;

/// <summary>Draws a posture.</summary>
public static class PostureFigure
{
    /// <summary>The smallest box a figure is drawn in.</summary>
    public const double SmallestMm = 5;

    /// <summary>The figure of a settled posture.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="options">From where, how large, and what is shown with it.</param>
    /// <param name="description">What a reader who does not see it is told; empty where a text beside the figure says it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A box smaller than 5 mm, or a scale that is not more than 0.</exception>
    public static Figure Of(SettledPosture settled, FigureOptions options, string description)
    {
        Check(options);
        var frame = options.Frame ?? FigureProjection.Fitting(settled, options);
        var scene = FigureDrawing.Of(
            Bodies(settled, frame), PostureStage.Of(settled, options, frame), frame.StatureMm, options.WidthMm, options.HeightMm, description);
        return new Figure(scene, frame);
    }

    /// <summary>The largest scale at which each of several figures fits the box: the scale of a sheet on which all are one size.</summary>
    /// <param name="postures">One or more.</param>
    /// <param name="options">The box; its own scale is not looked at.</param>
    /// <returns>In millimetres for one stature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A box smaller than 5 mm, or a scale that is not more than 0.</exception>
    public static double FittingMm(IReadOnlyList<SettledPosture> postures, FigureOptions options)
    {
        Check(options);
        return postures.Min(p => FigureProjection.Fitting(p, options with { StatureMm = null }).StatureMm);
    }

    /// <summary>The view that shows most of a posture, where nobody has chosen one: side or front.</summary>
    /// <param name="settled">On the floor.</param>
    public static FigureView ClearestView(SettledPosture settled) => FigureProjection.ClearestView(settled);

    /// <summary>The one view for several postures that are to be compared: from the side, unless that hides what the arms of one of them do.</summary>
    /// <param name="postures">Any number.</param>
    public static FigureView SharedView(IEnumerable<SettledPosture> postures) =>
        postures.Any(p => ClearestView(p) == FigureView.Front) ? FigureView.ThreeQuarter : FigureView.Side;

    internal static FigureBody[] Bodies(SettledPosture settled, FigureFrame frame) =>
        [.. settled.Bodies.Select((body, kit) => BodyFlesh.Of(body, frame, kit))];

    /// <summary>Says what is wrong with the options, if anything is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A box smaller than 5 mm, or a scale that is not more than 0.</exception>
    private static void Check(FigureOptions options)
    {
        if (!(Math.Min(options.WidthMm, options.HeightMm) >= SmallestMm) || !double.IsFinite(options.WidthMm + options.HeightMm))
            throw new ArgumentOutOfRangeException(nameof(options), options, $"A figure's box is at least {SmallestMm} mm wide and high.");
        if (options.StatureMm is { } statureMm && !(statureMm > 0 && double.IsFinite(statureMm)))
            throw new ArgumentOutOfRangeException(nameof(options), statureMm, "A figure's scale is more than 0 mm for one stature.");
    }
}
