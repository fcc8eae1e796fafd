namespace Slantwise.Engines.Mechanics;

/// <summary>The point at which a body balances.</summary>
public static class CentreOfMass
{
    /// <summary>The mean of the segments' centres, each weighted by its mass.</summary>
    /// <param name="segments">Shape (n), n ≥ 1, any order, one frame. Masses need not sum to 1, but not all may be 0.</param>
    /// <returns>A point in the frame of the input. It may lie outside the body.</returns>
    /// <exception cref="ArgumentException">No segments; a mass that is negative or not finite; a total of 0.</exception>
    /// <remarks>Source: [Winter2009] ch. 4.</remarks>
    public static Point3 Of(ReadOnlySpan<PointMass> segments)
    {
        var (massFraction, sum) = (0.0, new Point3(0, 0, 0));
        foreach (var segment in segments)
        {
            if (!(segment.MassFraction >= 0) || double.IsInfinity(segment.MassFraction))
                throw new ArgumentException($"A segment's mass is a finite fraction of 0 or more, not {segment.MassFraction}.", nameof(segments));
            massFraction += segment.MassFraction;
            sum += segment.MassFraction * segment.Centre;
        }
        if (massFraction == 0) throw new ArgumentException("At least one segment with mass is needed.", nameof(segments));
        return 1 / massFraction * sum;
    }
}
