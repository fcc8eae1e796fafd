using static Slantwise.Engines.Drawing.Charts.ChartText;

namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A share that falls in steps over time, with its range as a band: how many of all still hold after so many seconds.</summary>
/// <remarks>Dashed where few are left, so that it shows without colour. All words are the caller's.</remarks>
public static class HeldSteps
{
    private const double PlotMm = 30;
    private const double TopMm = 3;
    private const double AxisMm = 6;
    private const double EdgeMm = 13;
    private const double RightMm = 3;

    /// <summary>The chart. It begins with everybody at 0 s and ends at the last step.</summary>
    /// <param name="steps">At least one, in order of time; the last after 0 s.</param>
    /// <param name="widthMm">40 or more; made for 60 to 120.</param>
    /// <param name="share">What stands at none, half and all.</param>
    /// <param name="time">What stands at 0 s, in the middle and at the last step.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <exception cref="ArgumentException">No step, or steps out of order.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Narrower than 40 mm, or not a number; a share or range outside 0 to 1 or upside down.</exception>
    public static Scene Of(IReadOnlyList<HeldStep> steps, double widthMm, ScaleText share, ScaleText time, string description)
    {
        CheckWidth(widthMm);
        Check(steps);
        var endS = steps[^1].TimeS;
        double X(double timeS) => EdgeMm + timeS / endS * (widthMm - EdgeMm - RightMm);
        double Y(double fraction) => TopMm + (1 - fraction) * PlotMm;

        var shapes = new List<Shape>();
        for (var i = 0; i + 1 < steps.Count; i++)
        {
            // From this step to the next the share and its range stand still.
            if (steps[i] is { LowFraction: { } low, HighFraction: { } high } && high > low)
                shapes.Add(new Box(X(steps[i].TimeS), Y(high), X(steps[i + 1].TimeS) - X(steps[i].TimeS), Y(low) - Y(high), Tone.AccentSoft));
        }
        foreach (var (fraction, word) in new[] { (0.0, share.Start), (0.5, share.Middle), (1.0, share.End) })
        {
            shapes.Add(new Line(EdgeMm, Y(fraction), widthMm - RightMm, Y(fraction), 0.2, Tone.Faint));
            shapes.Add(new Text(EdgeMm - 1, Y(fraction) + 1, word, SmallPt, Tone.Muted, TextAnchor.End));
        }
        var (atS, left) = (0.0, 1.0);
        foreach (var step in steps)
        {
            shapes.Add(new Line(X(atS), Y(left), X(step.TimeS), Y(left), 0.7, Tone.Accent, step.IsThin));
            if (step.ShareFraction < left) shapes.Add(new Line(X(step.TimeS), Y(left), X(step.TimeS), Y(step.ShareFraction), 0.7, Tone.Accent, step.IsThin));
            (atS, left) = (step.TimeS, step.ShareFraction);
        }
        foreach (var (fraction, word, anchor) in new[] { (0.0, time.Start, TextAnchor.Start), (0.5, time.Middle, TextAnchor.Middle), (1.0, time.End, TextAnchor.End) })
            shapes.Add(new Text(X(fraction * endS), TopMm + PlotMm + AxisMm - 1.5, word, SmallPt, Tone.Muted, anchor));
        return new Scene(widthMm, TopMm + PlotMm + AxisMm, shapes, description);
    }

    /// <summary>Says what is wrong with the steps, if anything is.</summary>
    /// <exception cref="ArgumentException">No step, or steps out of order.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share or range outside 0 to 1 or upside down.</exception>
    private static void Check(IReadOnlyList<HeldStep> steps)
    {
        if (steps.Count == 0 || !(steps[^1].TimeS > 0)) throw new ArgumentException("A curve has at least one step, the last after 0 seconds.", nameof(steps));
        var before = new HeldStep(-1, 1, null, null, false);
        foreach (var step in steps)
        {
            if (!(step.TimeS > before.TimeS && step.TimeS >= 0) || !double.IsFinite(step.TimeS)) throw new ArgumentException($"Steps come in order of time, at 0 seconds or later; here is {step.TimeS}.", nameof(steps));
            var isInRange = step is { LowFraction: null, HighFraction: null }
                || (0 <= step.LowFraction && step.LowFraction <= step.ShareFraction && step.ShareFraction <= step.HighFraction && step.HighFraction <= 1);
            if (!(step.ShareFraction >= 0 && step.ShareFraction <= before.ShareFraction) || !isInRange)
                throw new ArgumentOutOfRangeException(nameof(steps), step, "A share falls from 1 to 0 and lies inside its range.");
            before = step;
        }
    }
}
