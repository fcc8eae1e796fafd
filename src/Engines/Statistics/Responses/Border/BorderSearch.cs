using Slantwise.Engines.Statistics.Responses.Numerics;
using Slantwise.Engines.Statistics.Responses.Pupils;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>Newton's method for the border at given spreads, with pupils eliminated one by one: only a system as large as the border is ever solved.</summary>
internal sealed class BorderSearch(TermTable table, BorderDesign design, ResponseOptions options, PupilRounds rounds)
{
    private const int MostRounds = 60;

    /// <summary>The prior middle of the border, where the first search begins; but a slope of timed holds begins above 0.</summary>
    public double[] Start
    {
        get
        {
            double[] start = [.. design.Prior.Mean];
            for (var c = 0; c < design.Columns.Count; c++)
                if (design.Layout.HasShape && design.Columns[c].Rows[design.Layout.ShapeRow] != 0 && start[c] <= 0) start[c] = 1;
            return start;
        }
    }

    /// <summary>The likeliest border.</summary>
    /// <param name="scales">At these spreads.</param>
    /// <param name="start">From here.</param>
    /// <param name="peaks">The pupils' peaks nearby; none to begin at the middle.</param>
    /// <param name="isForeseen">Whether the last step may be taken without a look at where it ends, once Newton's squaring leaves nothing to see there. The
    /// determinant is then the one before that step: good enough for a weight, not for differences of determinants.</param>
    public BorderPoint At(Scales scales, ReadOnlySpan<double> start, PupilPoint? peaks, bool isForeseen = false)
    {
        double[] border = [.. start], step = [];
        var modes = peaks is null ? new double[table.PupilCount] : [.. peaks.Modes];
        var walks = peaks is null || peaks.Walks.Length != table.StateCount ? new double[table.StateCount] : [.. peaks.Walks];
        BorderPoint? best = null;
        var halvings = 0;
        for (var round = 1; ; round++)
        {
            var pupils = new PupilPoint(design.RowsOf(border), scales.Ability, modes, walks);
            var (point, gradient, _, _) = Evaluate(border, pupils, scales, round);
            if (best is null && gradient.Length == 0 && round < MostRounds)
            {
                // A start foretold from other spreads may lie where no border can be; what was assumed never does.
                border = Start;
                continue;
            }
            if (best is not null && !(point.LogJoint >= best.LogJoint - 1e-9 * (1 + Math.Abs(best.LogJoint))))
            {
                if (halvings++ == 20 || round >= MostRounds) return best with { Rounds = round };
                border = [.. border];
                for (var k = 0; k < step.Length; k++) border[k] = best.Border[k] + (step[k] /= 2);
                continue;
            }
            step = point.Factor.Solve(gradient);
            var decrement = 0.0;
            for (var k = 0; k < step.Length; k++) decrement += step[k] * gradient[k];
            var (distance, before) = (Math.Sqrt(Math.Abs(decrement)), halvings == 0 ? best?.DistanceSd ?? 0 : 0);
            halvings = 0;
            best = point with { DistanceSd = distance };
            if (distance < options.ToleranceSd || round >= MostRounds) return best;
            border = [.. border];
            for (var k = 0; k < step.Length; k++) border[k] += step[k];
            if (isForeseen && Foreseen(before, distance) is var next && next < options.ToleranceSd)
                return best with { Border = border, Pupils = pupils with { Rows = design.RowsOf(border) }, LogJoint = best.LogJoint + decrement / 2, DistanceSd = next };
        }
    }

    /// <summary>
    /// How far a full step of Newton's method will end from the peak, by how the one before it did: each squares the distance. Four times that, to be safe.
    /// Only for steps so short that the information, which is then the one before the step, is right too, to about the root of the tolerance.
    /// </summary>
    /// <param name="before">The distance before the last full step; 0 where there was none.</param>
    /// <param name="distance">The distance after it.</param>
    public double Foreseen(double before, double distance) =>
        before > 0 && distance * distance < options.ToleranceSd ? 4 * distance * (distance / before) * (distance / before) : double.PositiveInfinity;

    /// <summary>One pass over the pupils.</summary>
    public BorderRound Evaluate(double[] border, PupilPoint pupils, Scales scales, int round)
    {
        var slope = design.Layout.HasShape ? pupils.Rows[design.Layout.ShapeRow] : 1;
        var shape = table.Shape.At(slope);
        if (double.IsNegativeInfinity(shape.Value))
            return Impossible();
        var sums = rounds.Sum(pupils);
        if (!double.IsFinite(sums.LogLikelihood)) return Impossible();
        var byRow = (double[])sums.Gradient.Clone();
        var away = design.Layout.HasShape && !options.IsFlat ? HoldShape.AwayFromZero(slope) : default;
        if (design.Layout.HasShape)
        {
            byRow[design.Layout.ShapeRow] += shape.First + away.First;
            sums.Information[design.Layout.ShapeRow * (design.Layout.RowCount + 1)] -= shape.Second + away.Second;
        }
        var gradient = design.ToBorder(byRow);
        var (cross, curvature) = SpreadParts(sums);
        var information = design.ToBorderInformation(sums.Information);
        var logLikelihood = sums.LogLikelihood + shape.Value;
        var (logPrior, residualSlope) = design.Prior.AddTo(border, scales.Residual, gradient, information);
        logPrior += away.Value;
        foreach (var entry in information) if (!double.IsFinite(entry)) return Impossible();
        return new(new(scales, border, pupils, Factored(information, border.Length), logLikelihood + logPrior, logLikelihood,
            new(sums.SpreadSlope, residualSlope), round, double.PositiveInfinity), gradient, cross, curvature);

        BorderRound Impossible() =>
            new(new(scales, border, pupils, Factored([1], 1), double.NegativeInfinity, double.NegativeInfinity, default, round, double.PositiveInfinity), [], [], 0);
    }

    private (double[] Cross, double Curvature) SpreadParts(PupilSums sums)
    {
        if (!design.Layout.HasSpread) return ([], 0);
        var row = sums.Information.AsSpan(design.Layout.SpreadRow * design.Layout.RowCount, design.Layout.RowCount).ToArray();
        var curvature = row[^1];
        row[^1] = 0;
        return (design.ToBorder(row), curvature);
    }

    /// <summary>The factor; where the matrix is not positive definite, far from the end of a search, of one with a heavier diagonal.</summary>
    private static Cholesky Factored(double[] information, int size)
    {
        for (var extra = 0.0; ; extra = extra == 0 ? 1e-3 : extra * 10)
        {
            for (var k = 0; extra > 0 && k < size; k++) information[k * size + k] += extra;
            if (Cholesky.Of(information, size) is { } factor) return factor;
        }
    }
}
