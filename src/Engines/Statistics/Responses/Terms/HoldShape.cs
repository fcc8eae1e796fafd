using MathNet.Numerics;

namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>The part of the timed falls' log-likelihood that depends on the slope of holds and on nothing else: Σ ± log(exp(γa) − exp(γb)).</summary>
internal sealed class HoldShape
{
    private readonly Piece[] _pieces;

    public HoldShape(IEnumerable<Piece> pieces, bool isUsed)
    {
        IsUsed = isUsed;
        _pieces = [.. pieces.GroupBy(p => (p.A, p.B)).Select(g => new Piece(g.Key.A, g.Key.B, g.Sum(p => p.Weight))).OrderBy(p => p.A).ThenBy(p => p.B)];
    }

    /// <summary>Whether any fall was timed. A watch that showed nearly 0 has no piece here, but terms that know the slope.</summary>
    public bool IsUsed { get; }

    /// <summary>
    /// What is assumed about the slope beyond its normal prior, as a log density and two derivatives: it vanishes at 0, by a factor of the slope itself. Among falls
    /// after the first moment a slope of 0 is possible, and a handful of them would otherwise end there. Source: [Chung2013] for the device (from memory).
    /// </summary>
    public static (double Value, double First, double Second) AwayFromZero(double slope) => (Math.Log(slope), 1 / slope, -1 / (slope * slope));

    /// <summary>Value and two derivatives; minus infinity where the slope is not above 0, for then longer holds would not be harder.</summary>
    public (double Value, double First, double Second) At(double slope)
    {
        if (!IsUsed) return (0, 0, 0);
        if (!(slope > 0)) return (double.NegativeInfinity, 0, 0);
        double value = 0, first = 0, second = 0;
        foreach (var (a, b, weight) in _pieces)
        {
            var width = a - b;
            // By hyperbolic functions, which hold where the slope is tiny and where it is huge.
            value += weight * (slope * a + Math.Log(-SpecialFunctions.Expm1(-slope * width)));
            first += weight * (a + width / SpecialFunctions.Expm1(slope * width));
            var half = Math.Sinh(slope * width / 2);
            second -= weight * width * width / (4 * half * half);
        }
        return (value, first, second);
    }

    /// <summary>± log(exp(γ·A) − exp(γ·B)), so many times.</summary>
    internal readonly record struct Piece(double A, double B, double Weight);
}
