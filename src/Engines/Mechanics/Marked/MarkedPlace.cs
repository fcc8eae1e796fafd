namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>A place that follows from the marks: a weighted sum of them, and how far the guesses in it may be off.</summary>
/// <remarks>Kept as weights, so that an error of clicking is carried through exactly.</remarks>
internal sealed record MarkedPlace(double[] Weights, double[] GuessesH)
{
    private static readonly int GuessCount = Enum.GetValues<MarkedGuess>().Length;

    public static MarkedPlace Of(int pointCount, int point)
    {
        var place = new MarkedPlace(new double[pointCount], new double[GuessCount]);
        place.Weights[point] = 1;
        return place;
    }

    /// <summary>A weighted sum of places; weights that sum to 1 give a place, weights that sum to 0 a difference.</summary>
    public static MarkedPlace Sum(params ReadOnlySpan<(double Weight, MarkedPlace Place)> parts)
    {
        var (weights, guessesH) = (new double[parts[0].Place.Weights.Length], new double[GuessCount]);
        foreach (var (weight, place) in parts)
        {
            for (var i = 0; i < weights.Length; i++) weights[i] += weight * place.Weights[i];
            for (var i = 0; i < GuessCount; i++) guessesH[i] += weight * place.GuessesH[i];
        }
        return new MarkedPlace(weights, guessesH);
    }

    /// <summary>The place a fraction of the way from a to b; beyond b for a fraction over 1.</summary>
    public static MarkedPlace Between(MarkedPlace a, MarkedPlace b, double atFraction) => Sum((1 - atFraction, a), (atFraction, b));

    /// <summary>The same place, known less well.</summary>
    public MarkedPlace Guessed(MarkedGuess guess, double sdH)
    {
        var guessesH = (double[])GuessesH.Clone();
        guessesH[(int)guess] += sdH;
        return this with { GuessesH = guessesH };
    }

    public PointPx At(IReadOnlyList<PointPx> points)
    {
        var sum = new PointPx(0, 0);
        for (var i = 0; i < points.Count; i++)
            if (Weights[i] != 0) sum += Weights[i] * points[i];
        return sum;
    }

    /// <summary>The variance of a difference along a direction, in square statures.</summary>
    /// <param name="clicksH2">The variance of each point.</param>
    /// <param name="along">The direction, of length 1.</param>
    /// <param name="lengthH">How long the difference is, for what an error of the scale does to it; 0 to leave that out.</param>
    /// <param name="slopesPx">How the scale changes with each point.</param>
    public double VarianceH2(IReadOnlyList<double> clicksH2, PointPx along, double lengthH, PointPx[] slopesPx)
    {
        var sum = 0.0;
        for (var i = 0; i < clicksH2.Count; i++)
        {
            var reach = Weights[i] * along - lengthH * slopesPx[i];
            sum += PointPx.Dot(reach, reach) * clicksH2[i];
        }
        foreach (var guessH in GuessesH) sum += guessH * guessH;
        return sum;
    }
}
