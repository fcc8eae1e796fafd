namespace Slantwise.Engines.Mechanics;

/// <summary>How forgiving a posture is: the share of small joint errors that keep it balanced.</summary>
/// <param name="HeldFraction">Share of the random errors after which the line of gravity still falls on the base, or on the wall's side of it.</param>
/// <param name="SampleCount">How many errors were tried.</param>
/// <param name="Spread">How far the errors shift the centre, with the standard deviation of each joint's error.</param>
public sealed record BalanceTolerance(double HeldFraction, int SampleCount, CentreSpread Spread)
{
    /// <summary>The standard deviation of each joint's error, stated with every answer.</summary>
    public double ErrorDeg => Spread.ErrorDeg;

    /// <summary>The tolerance of a pose on its contacts.</summary>
    /// <param name="pose">The angles.</param>
    /// <param name="contacts">What touches the floor.</param>
    /// <param name="errorDeg">Standard deviation of each joint's independent error, more than 0 and at most 10.</param>
    /// <param name="sampleCount">How many errors to try, 1 or more.</param>
    /// <param name="seed">Any; the same seed gives the same answer.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <exception cref="ArgumentOutOfRangeException">An error outside its range; no sample.</exception>
    public static BalanceTolerance Of(
        Pose pose, IReadOnlyList<Contact> contacts, double errorDeg = 3, int sampleCount = 1000, ulong seed = 1, BodyTable table = BodyTable.Mean)
    {
        var body = SettledBody.Of(pose, contacts);
        return Of(pose, body, BodyBalance.Of(body, table), errorDeg, sampleCount, seed, table);
    }

    /// <summary>The tolerance of a body that is on the floor, and may lean on a wall.</summary>
    /// <param name="pose">The angles.</param>
    /// <param name="body">The same pose on the floor.</param>
    /// <param name="balance">Its balance.</param>
    /// <param name="errorDeg">Standard deviation of each joint's independent error, more than 0 and at most 10.</param>
    /// <param name="sampleCount">How many errors to try, 1 or more.</param>
    /// <param name="seed">Any; the same seed gives the same answer.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <returns>The support stays where it is, and the centre moves in proportion to the errors: small errors only.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An error outside its range; no sample.</exception>
    public static BalanceTolerance Of(
        Pose pose, SettledBody body, BodyBalance balance, double errorDeg = 3, int sampleCount = 1000, ulong seed = 1, BodyTable table = BodyTable.Mean)
    {
        if (sampleCount < 1) throw new ArgumentOutOfRangeException(nameof(sampleCount), sampleCount, "At least one error is tried.");
        var spread = CentreSpread.Of(pose, body, errorDeg, table);

        // The shift is a sum of many small ones: normal, with this covariance. Its triangular root turns two deviates into a shift.
        var slopeH = spread.ForwardH > 0 ? spread.BothH2 / spread.ForwardH : 0;
        var restH = Math.Sqrt(Math.Max(0, spread.SidewaysH * spread.SidewaysH - slopeH * slopeH));
        var normal = new SeededNormal(seed);
        var heldCount = 0;
        for (var i = 0; i < sampleCount; i++)
        {
            var (first, second) = normal.Pair();
            var shifted = balance.Centre.OnFloor + new Point2(spread.ForwardH * first, slopeH * first + restH * second);
            if (balance.Margin.Holds(shifted)) heldCount++;
        }
        return new BalanceTolerance((double)heldCount / sampleCount, sampleCount, spread);
    }
}
