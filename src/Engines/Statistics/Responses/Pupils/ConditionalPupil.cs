using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>
/// A pupil with ability conditioned away: given how many trials succeeded in all, which ones they were depends on the levels alone.
/// Repeated trials of a level are allowed. Source: [Andersen1972] (from memory) for the likelihood.
/// </summary>
/// <remarks>
/// Chances of totals are built cell by cell, with all logits moved so that the total seen is the expected one: then no chance is ever too small to hold.
/// </remarks>
internal sealed class ConditionalPupil(TermTable table, RowLayout layout) : IPupilKernel
{
    private double[] _logits = [], _lessons = [];
    private int[] _levels = [];

    public void Add(int pupil, PupilPoint point, PupilSums sums)
    {
        var terms = table.Terms(pupil);
        var total = 0;
        var trials = 0;
        foreach (var term in terms)
        {
            total += (int)term.A;
            trials += (int)term.M;
        }
        // All or nothing can come about in one way only, whatever the levels.
        if (total == 0 || total == trials) return;
        Prepare(terms, table.Own(pupil), point.Rows);
        var cells = Cells(terms, Tilt(terms, total, ref point.Modes[pupil]));

        var (before, after) = Totals(cells, total);
        var all = Folded(before[^1], cells[^1], total)[total];
        var means = new double[terms.Length];
        for (var c = 0; c < terms.Length; c++)
        {
            var square = 0.0;
            for (var k = 1; k < cells[c].Length && k <= total; k++)
            {
                var chance = cells[c][k] * Meet(before[c], after[c], total - k) / all;
                means[c] += k * chance;
                square += k * k * chance;
            }
            Score(sums, c, terms[c].A - means[c]);
            Spread(sums, c, c, square - means[c] * means[c]);
        }
        Pairs(sums, cells, before, after, means, total, all);
        for (var c = 0; c < terms.Length; c++)
            sums.LogLikelihood += terms[c].A * _logits[c] - terms[c].M * Math.Log(1 + Math.Exp(_logits[c]));
        sums.LogLikelihood -= Math.Log(all);
    }

    private void Prepare(ReadOnlySpan<Term> terms, ReadOnlySpan<int> own, double[] rows)
    {
        (_logits, _lessons, _levels) = (new double[terms.Length], new double[terms.Length], new int[terms.Length]);
        var growth = layout.HasGrowth ? rows[layout.GrowthRow] : 0;
        for (var c = 0; c < terms.Length; c++)
        {
            (_levels[c], _lessons[c]) = (own[terms[c].Own], terms[c].Lesson);
            _logits[c] = growth * _lessons[c] - rows[_levels[c]];
        }
    }

    /// <summary>How far all logits move for the total seen to be the expected one.</summary>
    private double Tilt(ReadOnlySpan<Term> terms, int total, ref double start)
    {
        double low = double.NegativeInfinity, high = double.PositiveInfinity, tilt = start;
        for (var round = 0; round < 100; round++)
        {
            double missing = total, slope = 0;
            for (var c = 0; c < terms.Length; c++)
            {
                var chance = 1 / (1 + Math.Exp(-_logits[c] - tilt));
                missing -= terms[c].M * chance;
                slope += terms[c].M * chance * (1 - chance);
            }
            if (missing > 0) low = tilt; else high = tilt;
            var next = tilt + Math.Clamp(missing / slope, -3, 3);
            if (!(next > low && next < high)) next = double.IsFinite(low + high) ? (low + high) / 2 : tilt + Math.Sign(missing);
            if (Math.Abs(next - tilt) < 1e-6) break;
            tilt = next;
        }
        start = tilt;
        return tilt;
    }

    /// <summary>For each cell the chances of each number of successes, logits moved.</summary>
    private double[][] Cells(ReadOnlySpan<Term> terms, double tilt)
    {
        var cells = new double[terms.Length][];
        for (var c = 0; c < cells.Length; c++)
        {
            _logits[c] += tilt;
            var chance = 1 / (1 + Math.Exp(-_logits[c]));
            var cell = new double[(int)terms[c].M + 1];
            cell[0] = 1;
            for (var n = 1; n < cell.Length; n++)
            {
                for (var k = n; k > 0; k--) cell[k] = cell[k] * (1 - chance) + cell[k - 1] * chance;
                cell[0] *= 1 - chance;
            }
            cells[c] = cell;
        }
        return cells;
    }

    /// <summary>Chances of totals over the cells before each cell, and over those after it.</summary>
    private static (double[][] Before, double[][] After) Totals(double[][] cells, int total)
    {
        var (before, after) = (new double[cells.Length][], new double[cells.Length][]);
        before[0] = after[^1] = [1];
        for (var c = 1; c < cells.Length; c++) before[c] = Folded(before[c - 1], cells[c - 1], total);
        for (var c = cells.Length - 2; c >= 0; c--) after[c] = Folded(after[c + 1], cells[c + 1], total);
        return (before, after);
    }

    /// <summary>Chances of the total of two parts, up to the most that matters.</summary>
    private static double[] Folded(double[] a, double[] b, int most)
    {
        var folded = new double[Math.Min(a.Length + b.Length - 1, most + 1)];
        for (var i = 0; i < a.Length; i++)
            for (var k = 0; k < b.Length && i + k < folded.Length; k++) folded[i + k] += a[i] * b[k];
        return folded;
    }

    /// <summary>The chance that two parts have one total together.</summary>
    private static double Meet(double[] a, double[] b, int total)
    {
        var sum = 0.0;
        for (var i = Math.Max(0, total - b.Length + 1); i < a.Length && i <= total; i++) sum += a[i] * b[total - i];
        return sum;
    }

    private void Pairs(PupilSums sums, double[][] cells, double[][] before, double[][] after, double[] means, int total, double all)
    {
        for (var c = 0; c < cells.Length; c++)
        {
            // All before this cell, and then more and more of those between it and the other.
            var others = before[c];
            for (var d = c + 1; d < cells.Length; d++)
            {
                if (d > c + 1) others = Folded(others, cells[d - 1], total);
                var product = 0.0;
                for (var j = 1; j < cells[c].Length; j++)
                    for (var k = 1; k < cells[d].Length && j + k <= total; k++) product += j * k * cells[c][j] * cells[d][k] * Meet(others, after[d], total - j - k);
                Spread(sums, c, d, product / all - means[c] * means[d]);
            }
        }
    }

    private void Score(PupilSums sums, int cell, double rest)
    {
        sums.Gradient[_levels[cell]] -= rest;
        if (layout.HasGrowth) sums.Gradient[layout.GrowthRow] += _lessons[cell] * rest;
    }

    private void Spread(PupilSums sums, int c, int d, double covariance)
    {
        var both = c == d ? 1 : 2;
        Put(sums, _levels[c], _levels[d], (_levels[c] == _levels[d] ? both : 1) * covariance);
        if (!layout.HasGrowth) return;
        Put(sums, layout.GrowthRow, _levels[c], -_lessons[d] * covariance);
        if (c != d) Put(sums, layout.GrowthRow, _levels[d], -_lessons[c] * covariance);
        Put(sums, layout.GrowthRow, layout.GrowthRow, both * _lessons[c] * _lessons[d] * covariance);
    }

    private static void Put(PupilSums sums, int row, int column, double value) =>
        sums.Information[Math.Max(row, column) * sums.Gradient.Length + Math.Min(row, column)] += value;
}
