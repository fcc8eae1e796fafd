namespace Slantwise.Engines.Statistics.Holds;

/// <summary>The likeliest way to share holds out over the stretches that spans can tell apart.</summary>
internal sealed class SpanSearch
{
    private const int RoundsAtMost = 50_000;
    private const double Enough = 1e-7;

    private readonly IReadOnlyList<HoldSpan> spans;
    private readonly Dictionary<HoldSpan, int> places;
    private readonly List<(Mark From, Mark To)> stretches = [];
    // For each span the first stretch it may have ended in and the one after the last.
    private readonly (int First, int End)[] reach;

    public SpanSearch(IReadOnlyList<HoldSpan> spans)
    {
        this.spans = spans;
        places = spans.Select((s, i) => (s, i)).ToDictionary(p => p.s, p => p.i);
        // A stretch runs from a beginning to the next end with no other mark between: anything wider could be likelier in part.
        var marks = spans.SelectMany(s => new[] { (Mark: From(s), IsEnd: false), (Mark: To(s), IsEnd: true) }).Distinct().Order().ToList();
        for (var i = 0; i + 1 < marks.Count; i++)
            if (!marks[i].IsEnd && marks[i + 1].IsEnd) stretches.Add((marks[i].Mark, marks[i + 1].Mark));
        reach = spans.Select(s => (stretches.FindIndex(t => t.From.CompareTo(From(s)) >= 0), stretches.FindLastIndex(t => t.To.CompareTo(To(s)) <= 0) + 1)).ToArray();
    }

    public double[] WeightsOf(IEnumerable<HoldSpan> holds)
    {
        var weights = new double[spans.Count];
        foreach (var span in holds) weights[places[span]]++;
        return weights;
    }

    public (double FromS, double? ToS) Stretch(int j) => (stretches[j].From.TimeS, double.IsFinite(stretches[j].To.TimeS) ? stretches[j].To.TimeS : null);

    public bool IsLast(int j) => j == stretches.Count - 1;

    /// <summary>The shares, in the order of stretches; none where the search did not arrive. Each hold is shared out in proportion, again and again.</summary>
    public double[]? Shares(double[] weights, double[]? near)
    {
        var (m, n) = (stretches.Count, weights.Sum());
        // A share that starts at nothing stays there, so a little of each is mixed in.
        var shares = Enumerable.Range(0, m).Select(j => near is null ? 1.0 / m : .9 * near[j] + .1 / m).ToArray();
        var pull = new double[m];
        for (var round = 0; round < RoundsAtMost; round++)
        {
            Array.Clear(pull);
            for (var i = 0; i < spans.Count; i++)
            {
                if (weights[i] == 0) continue;
                var sum = 0.0;
                for (var j = reach[i].First; j < reach[i].End; j++) sum += shares[j];
                var part = weights[i] / (sum * n);
                for (var j = reach[i].First; j < reach[i].End; j++) pull[j] += part;
            }
            // At the top no stretch pulls more than its share's worth, and those with a share pull just that.
            if (pull.Max() <= 1 + Enough) return shares;
            for (var j = 0; j < m; j++) shares[j] *= pull[j];
        }
        return null;
    }

    private static Mark From(HoldSpan span) => new(span.LowS, span.IsExact ? 0 : 2);

    private static Mark To(HoldSpan span) => new(span.HighS ?? double.PositiveInfinity, 1);

    // At one time an exact fall begins first, then whatever ends there ends, then "after it" begins.
    private readonly record struct Mark(double TimeS, int Rank) : IComparable<Mark>
    {
        public int CompareTo(Mark other) => (TimeS, Rank).CompareTo((other.TimeS, other.Rank));
    }
}
