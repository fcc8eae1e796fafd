namespace Slantwise.Engines.Marks;

/// <summary>
/// How far the printed outline darkens what lies beside it, by the distance from it: what blur, a coarse picture or heavy print make of a thin line. It is
/// taken from the fields of a page themselves and then taken away from each, so that only what was added by hand stays.
/// </summary>
/// <remarks>
/// In each field the median at a distance, which strokes across it do not reach; of all fields of a shape a low quantile, which marked ones do not reach. It
/// is never more than a line blurred as the anchors' edges are, and a little, so that a page on which every field is filled does not pass for empty.
/// </remarks>
internal static class OutlineProfile
{
    private const double LineMm = .3;
    private const double FieldShare = .3;
    private const double AllowedFactor = 1.35;
    private const double AllowedFraction = .02;

    /// <summary>Takes the outline's share away from every field of a shape.</summary>
    /// <param name="zones">The shape's zones.</param>
    /// <param name="fields">Its fields' darkness; changed.</param>
    /// <param name="blurMm">The blur as a standard deviation.</param>
    public static void TakeAway(FieldZones zones, IReadOnlyList<FieldPatch> fields, double blurMm)
    {
        var profile = Of(zones, fields, blurMm);
        foreach (var patch in fields)
            foreach (var (pixel, bin) in zones.Bins) patch.Values[pixel] -= profile[bin];
    }

    private static float[] Of(FieldZones zones, IReadOnlyList<FieldPatch> fields, double blurMm)
    {
        var profile = new float[FieldZones.BinCount];
        var medians = new List<double>[FieldZones.BinCount];
        for (var bin = 0; bin < profile.Length; bin++) medians[bin] = [];
        Span<int> counts = stackalloc int[Shares.StepCount];
        foreach (var patch in fields)
        {
            // The bins lie one after the other.
            for (var i = 0; i < zones.Bins.Length;)
            {
                counts.Clear();
                var shares = new Shares(counts);
                var bin = zones.Bins[i].Bin;
                for (; i < zones.Bins.Length && zones.Bins[i].Bin == bin; i++) shares.Add(patch.Values[zones.Bins[i].Pixel]);
                medians[bin].Add(shares.Below(.5));
            }
        }
        for (var bin = 0; bin < profile.Length; bin++)
        {
            if (medians[bin].Count == 0) continue;
            medians[bin].Sort();
            var seen = medians[bin][(int)(FieldShare * (medians[bin].Count - 1))];
            profile[bin] = (float)Math.Clamp(seen, 0, AllowedFactor * Blurred(FieldZones.OutMm(bin), blurMm) + AllowedFraction);
        }
        return profile;
    }

    // A line's darkness beside it: the part of a normal curve that lies within its width.
    private static double Blurred(double atMm, double blurMm) => Below((atMm + LineMm / 2) / blurMm) - Below((atMm - LineMm / 2) / blurMm);

    // The normal distribution function to .003. Source: [Polya1949] as 1/2 (1 + sign √(1 - e^(-2x²/π))).
    private static double Below(double x) => .5 * (1 + Math.Sign(x) * Math.Sqrt(1 - Math.Exp(-2 * x * x / Math.PI)));
}
