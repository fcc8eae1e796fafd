namespace Slantwise.Engines.Statistics.Holds;

/// <summary>The climb to the likeliest slope and places, and their errors.</summary>
internal sealed class LawSearch
{
    private readonly HoldLaw law;
    private readonly IReadOnlyList<GroupedHold> holds;
    private double[] place;

    public LawSearch(HoldLaw law, IReadOnlyList<GroupedHold> holds, int groupCount)
    {
        (this.law, this.holds) = (law, holds);
        // From one slope for all: a middle of each group's logs, and a slope that makes their spread about 1.
        Slope = 1.5;
        place = new double[groupCount];
        foreach (var group in holds.GroupBy(h => h.Group))
        {
            place[group.Key] = Slope * group.Average(h =>
                Math.Log(h.Span is { LowS: > 0, HighS: { } high } ? (h.Span.LowS + high) / 2 : h.Span.LowS > 0 ? h.Span.LowS : h.Span.HighS!.Value));
        }
    }

    public double Slope { get; private set; }

    /// <summary>Climbs, and says in how many rounds; the limit where it did not arrive.</summary>
    public int Climb(int roundsAtMost)
    {
        var value = ValueAt(place, Slope);
        for (var round = 1; round < roundsAtMost; round++)
        {
            var (score, information) = Bend(holds);
            if (!information.IsPositive) return roundsAtMost;
            var step = information.Solve(score);
            var gain = step.Zip(score, (a, b) => a * b).Sum();
            if (gain < 1e-12 * Math.Max(1, Math.Abs(value)))
            {
                // So near the top the likelihood is flat to a double, and the last step is good without looking.
                place = place.Select((p, g) => p + step[g]).ToArray();
                Slope += step[^1];
                return round;
            }
            var length = 1.0;
            for (; length > 1e-10; length /= 2)
            {
                var to = place.Select((p, g) => p + length * step[g]).ToArray();
                var slope = Slope + length * step[^1];
                var there = ValueAt(to, slope);
                if (!(there > value)) continue;
                (place, Slope, value) = (to, slope, there);
                break;
            }
            // No step up is left that a double can tell, though one was promised: not the top of a smooth hill.
            if (length <= 1e-10) return roundsAtMost;
        }
        return roundsAtMost;
    }

    public FittedLaw Curves(bool byPupil)
    {
        var (_, information) = Bend(holds);
        return new(law, place, Slope, byPupil ? ByPupil(information) : Inverse(information), ValueAt(place, Slope));
    }

    private double[,] Inverse(Arrow information)
    {
        var n = place.Length + 1;
        var inverse = new double[n, n];
        for (var column = 0; column < n; column++)
        {
            var unit = new double[n];
            unit[column] = 1;
            var answer = information.Solve(unit);
            for (var row = 0; row < n; row++) inverse[row, column] = answer[row];
        }
        return inverse;
    }

    private double[,] ByPupil(Arrow information)
    {
        var units = holds.Where(h => h.Pupil is not null).GroupBy(h => h.Pupil).Select(g => g.ToList())
            .Concat(holds.Where(h => h.Pupil is null).Select(h => new List<GroupedHold> { h }));
        var moves = new List<double[]>();
        foreach (var unit in units)
        {
            var (score, own) = Bend(unit);
            var less = information.Less(own);
            // Without the only pupil who tells two directions apart no step exists; the small step of the whole stands in.
            moves.Add((less.IsPositive ? less : information).Solve(score.Select(s => -s).ToArray()));
        }
        var n = place.Length + 1;
        var mean = Enumerable.Range(0, n).Select(i => moves.Average(m => m[i])).ToArray();
        var covariance = new double[n, n];
        foreach (var move in moves)
            for (var a = 0; a < n; a++)
                for (var b = 0; b < n; b++)
                    covariance[a, b] += (move[a] - mean[a]) * (move[b] - mean[b]) * (moves.Count - 1) / moves.Count;
        return covariance;
    }

    private double ValueAt(double[] at, double slope)
    {
        var sum = 0.0;
        foreach (var (span, group, _) in holds)
        {
            var term = Term(span, at[group], slope);
            sum += term.Value;
            if (span.IsExact) sum += Math.Log(slope) - Math.Log(span.LowS);
        }
        return double.IsNaN(sum) ? double.NegativeInfinity : sum;
    }

    private LawTerm Term(HoldSpan span, double at, double slope)
    {
        var low = slope * Math.Log(span.LowS) - at;
        if (span.HighS is not { } top) return span.LowS == 0 ? default : LawTerm.Beyond(law, low);
        if (span.IsExact) return LawTerm.Exact(law, low);
        var high = slope * Math.Log(top) - at;
        return span.LowS == 0 ? LawTerm.Before(law, high) : LawTerm.Between(law, low, high);
    }

    // Both ends move with the place by −1 and with the slope by their own log time, so the bend needs no second derivative of them.
    private (double[] Score, Arrow Information) Bend(IEnumerable<GroupedHold> of)
    {
        var k = place.Length;
        var (score, information) = (new double[k + 1], new Arrow(k));
        foreach (var (span, g, _) in of)
        {
            var term = Term(span, place[g], Slope);
            var (low, high) = (span.LowS > 0 ? Math.Log(span.LowS) : 0, span.HighS is { } top ? Math.Log(top) : 0);
            score[g] -= term.Low + term.High;
            score[k] += term.Low * low + term.High * high;
            information.Diagonal[g] -= term.LowLow + 2 * term.LowHigh + term.HighHigh;
            information.Border[g] += term.LowLow * low + term.LowHigh * (low + high) + term.HighHigh * high;
            information.Corner -= term.LowLow * low * low + 2 * term.LowHigh * low * high + term.HighHigh * high * high;
            if (!span.IsExact) continue;
            score[k] += 1 / Slope;
            information.Corner += 1 / (Slope * Slope);
        }
        return (score, information);
    }
}
