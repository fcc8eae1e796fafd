namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>
/// A timed fall as terms. With S(t) = logistic(η + γ·log(d/t)) the chance of holding t seconds of the d asked for, a fall between a and b is
/// S(a) − S(b). Where falls before a first moment c are told apart, it is (1 − S(d))·(S(a) − S(b)) / (S(c) − S(d)): failed, and among the falls
/// that come after c, this one.
/// </summary>
internal static class FallTerms
{
    /// <summary>The terms, and their parts that do not depend on η; none where the time says no more than the tick.</summary>
    /// <param name="heldS">What the stopwatch showed.</param>
    /// <param name="doseS">What was asked for.</param>
    /// <param name="options">To what the watch was read, and the first moment.</param>
    public static (List<(double Tau, float M, float A)> Terms, List<HoldShape.Piece> Pieces)? Of(double heldS, double doseS, ResponseOptions options)
    {
        var (low, high) = (Math.Max(heldS - options.StopwatchStepS / 2, options.FirstMomentS), Math.Min(heldS + options.StopwatchStepS / 2, doseS));
        if (heldS < options.FirstMomentS || !(low < high)) return null;
        var (a, b) = (Math.Log(doseS / low), Math.Log(doseS / high));
        if (options.FirstMomentS > 0)
        {
            var c = Math.Log(doseS / options.FirstMomentS);
            return ([(a, 1, 0), (b, 1, 0), (c, -1, 0)], [new(a, b, 1), new(c, 0, -1)]);
        }
        // A watch that shows nearly 0 leaves no lower end: all that is known is a fall before the upper one.
        return low > 0 ? ([(a, 1, 1), (b, 1, 0)], [new(a, b, 1)]) : ([(b, 1, 0)], []);
    }
}
