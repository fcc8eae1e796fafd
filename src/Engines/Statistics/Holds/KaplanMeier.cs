namespace Slantwise.Engines.Statistics.Holds;

/// <summary>How long holds last, assuming no curve: the product-limit estimate.</summary>
/// <remarks>
/// The range is taken where the curve is bent least, on the scale log(−log(share)), and so never leaves 0 to 1.
/// Sources: [KaplanMeier1958] for the estimate; [KalbfleischPrentice2002] section 1.4 for the range; [Tukey1958] for errors by leaving out a pupil.
/// </remarks>
public static class KaplanMeier
{
    internal const int FewHolds = 10, FewPupils = 6;

    /// <summary>The curve of some holds of one task; where targets differ, ask for each target on its own.</summary>
    /// <param name="holds">Any number, any order. Where one pupil has several, the errors come from leaving out one pupil at a time, else from Greenwood's formula.</param>
    /// <param name="confidenceFraction">How often such ranges hold the true share, between 0 and 1: 0.90, 0.95.</param>
    /// <exception cref="ArgumentOutOfRangeException">A hold that is negative or not finite; a confidence that is not between 0 and 1.</exception>
    public static HoldCurve Of(IReadOnlyList<HoldTime> holds, double confidenceFraction)
    {
        Confidence.Check(confidenceFraction);
        Check(holds);

        var counts = Count(holds);
        var shares = Shares(counts);
        var named = holds.Where(h => h.Pupil is not null).GroupBy(h => h.Pupil).Select(g => g.ToList()).ToList();
        var pupils = named.Count + holds.Count(h => h.Pupil is null);
        var byPupil = pupils < holds.Count;
        var errors = byPupil ? ErrorsByPupil(holds, named, counts) : Greenwood(counts, shares);

        var z = Confidence.HalfWidthSd(confidenceFraction);
        var steps = counts.Select((c, i) =>
        {
            if (shares[i] is <= 0 or >= 1) return new SurvivalStep(c.TimeS, c.AtRisk, c.Fallen, c.Stopped, shares[i], null, null, null);
            // d log(−log S) = dS / (S log S), so the range is S to the power exp(±z·error/(S log S)).
            var bend = z * errors[i] / (shares[i] * Math.Log(shares[i]));
            return new SurvivalStep(
                c.TimeS, c.AtRisk, c.Fallen, c.Stopped, shares[i], errors[i],
                Math.Pow(shares[i], Math.Exp(-bend)), Math.Pow(shares[i], Math.Exp(bend)));
        }).ToArray();
        return new(steps, holds.Count, holds.Count(h => h.HasFallen), pupils, byPupil, MedianHold.Of(steps), CautionsOf(holds, byPupil, pupils));
    }

    internal static void Check(IReadOnlyList<HoldTime> holds)
    {
        foreach (var hold in holds)
        {
            if (!(hold.HeldS >= 0 && double.IsFinite(hold.HeldS)))
                throw new ArgumentOutOfRangeException(nameof(holds), hold.HeldS, "A hold lasts 0 seconds or more and is a number.");
        }
    }

    internal static HoldCautions CautionsOf(IReadOnlyList<HoldTime> holds, bool byPupil, int pupilCount)
    {
        if (holds.Count == 0) return HoldCautions.NoHolds;
        var cautions = HoldCautions.None;
        if (holds.Count < FewHolds) cautions |= HoldCautions.FewHolds;
        if (!holds.Any(h => h.HasFallen)) cautions |= HoldCautions.NobodyFell;
        if (holds.Where(h => !h.HasFallen).Select(h => h.HeldS).Distinct().Skip(1).Any()) cautions |= HoldCautions.MixedTargets;
        if (byPupil && pupilCount < FewPupils) cautions |= HoldCautions.FewPupils;
        return cautions;
    }

    // A hold stopped at the very time another one ended is still at risk of it: falls come first within a tie.
    private static TimeCount[] Count(IReadOnlyList<HoldTime> holds)
    {
        var left = holds.Count;
        return holds.GroupBy(h => h.HeldS).OrderBy(g => g.Key).Select(g =>
        {
            var (all, fallen) = (g.Count(), g.Count(h => h.HasFallen));
            var count = new TimeCount(g.Key, left, fallen, all - fallen);
            left -= all;
            return count;
        }).ToArray();
    }

    private static double[] Shares(IReadOnlyList<TimeCount> counts)
    {
        var share = 1.0;
        return counts.Select(c => share *= (double)(c.AtRisk - c.Fallen) / c.AtRisk).ToArray();
    }

    private static double[] Greenwood(IReadOnlyList<TimeCount> counts, double[] shares)
    {
        var sum = 0.0;
        return counts.Select((c, i) =>
        {
            if (c.Fallen < c.AtRisk) sum += c.Fallen / ((double)c.AtRisk * (c.AtRisk - c.Fallen));
            return shares[i] * Math.Sqrt(sum);
        }).ToArray();
    }

    private static double[] ErrorsByPupil(IReadOnlyList<HoldTime> holds, IEnumerable<List<HoldTime>> named, TimeCount[] counts)
    {
        var spread = counts.Select(_ => new MeanSquare()).ToArray();
        foreach (var own in named.Concat(holds.Where(h => h.Pupil is null).Select(h => new List<HoldTime> { h })))
        {
            own.Sort((a, b) => a.HeldS.CompareTo(b.HeldS));
            var (share, passed) = (1.0, 0);
            for (var i = 0; i < counts.Length; i++)
            {
                var atRisk = counts[i].AtRisk - (own.Count - passed);
                var fallen = counts[i].Fallen;
                for (; passed < own.Count && own[passed].HeldS == counts[i].TimeS; passed++)
                    if (own[passed].HasFallen) fallen--;
                if (atRisk > 0) share *= (double)(atRisk - fallen) / atRisk;
                spread[i].Add(share);
            }
        }
        return spread.Select(s => s.JackknifeError).ToArray();
    }

    private readonly record struct TimeCount(double TimeS, int AtRisk, int Fallen, int Stopped);
}
