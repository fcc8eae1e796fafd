namespace Slantwise.Engines.Drawing;

/// <summary>Draws an outline piece by piece.</summary>
public sealed class Pen
{
    private readonly List<OutlineStep> _steps = [];

    /// <summary>Lifts the pen to a point, where a new run starts.</summary>
    /// <param name="xMm">From the left.</param>
    /// <param name="yMm">From the top.</param>
    public Pen MoveTo(double xMm, double yMm) => With(new OutlineStep(OutlineStepKind.Move, xMm, yMm));

    /// <summary>Draws straight to a point.</summary>
    /// <param name="xMm">From the left.</param>
    /// <param name="yMm">From the top.</param>
    public Pen LineTo(double xMm, double yMm) => With(new OutlineStep(OutlineStepKind.Line, xMm, yMm));

    /// <summary>Draws a cubic Bézier curve to a point.</summary>
    /// <param name="c1XMm">First control point, from the left.</param>
    /// <param name="c1YMm">First control point, from the top.</param>
    /// <param name="c2XMm">Second control point, from the left.</param>
    /// <param name="c2YMm">Second control point, from the top.</param>
    /// <param name="xMm">The end, from the left.</param>
    /// <param name="yMm">The end, from the top.</param>
    public Pen CurveTo(double c1XMm, double c1YMm, double c2XMm, double c2YMm, double xMm, double yMm) =>
        With(new OutlineStep(OutlineStepKind.Curve, xMm, yMm, c1XMm, c1YMm, c2XMm, c2YMm));

    /// <summary>Draws straight back to where the run started.</summary>
    public Pen Close() => With(new OutlineStep(OutlineStepKind.Close));

    /// <summary>What was drawn so far, as a stroke with round ends and joins.</summary>
    /// <param name="widthMm">The stroke's width, more than 0.</param>
    /// <param name="tone">Its colour.</param>
    /// <exception cref="InvalidOperationException">The outline does not begin with a move, or only moves.</exception>
    public Outline Stroke(double widthMm, Tone tone) => new(Drawn(), tone, widthMm);

    /// <summary>What was drawn so far, filled.</summary>
    /// <param name="tone">Its colour.</param>
    /// <exception cref="InvalidOperationException">The outline does not begin with a move, or only moves.</exception>
    public Outline Fill(Tone tone) => new(Drawn(), tone);

    private OutlineStep[] Drawn()
    {
        if (_steps.Count < 2 || _steps[0].Kind != OutlineStepKind.Move || _steps.All(s => s.Kind == OutlineStepKind.Move))
            throw new InvalidOperationException("An outline begins with a move and draws at least one piece.");
        return [.. _steps];
    }

    private Pen With(OutlineStep step)
    {
        _steps.Add(step);
        return this;
    }
}
