using Slantwise.Engines.Statistics.Responses.Border;
using Slantwise.Engines.Statistics.Responses.Pupils;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>
/// With very many pupils, a search among some of them, each standing for many, before a search among more and at last among all: nearly all passes are then
/// short ones, and the one over everybody begins so near to its end that two or three are enough.
/// </summary>
/// <remarks>
/// What the determinant of the border's information adds to the slopes of the spreads is as large as the number of levels and grows no further with pupils: it is
/// seen from a few thousand of them. That leaves the spreads, of 12 000 pupils, within one hundredth of a standard error, and of more pupils nearer.
/// </remarks>
internal sealed class NestedSearch(TermTable table, BorderDesign design, ResponseOptions options, ResponseWork work, ScaleAxis[] axes, Func<IPupilKernel> kernel)
{
    // From here on the detour is worth its while, and so many are asked first.
    private const int Many = 3000, Few = 750;

    // Each level has to be tried by some of them.
    private const int FewForEachLevel = 20;

    /// <summary>The peak over all pupils.</summary>
    /// <param name="search">The search over all.</param>
    /// <param name="near">One of nearly the same trials, to begin with.</param>
    /// <param name="isTiltKept">Whether what the determinant added there is taken over as well.</param>
    /// <param name="progress">Told how far it is.</param>
    public ScalePeak Find(BorderSearch search, ScalePeak? near, bool isTiltKept, Action<double> progress)
    {
        var (rounds, sizes) = (0, new TableSizes(table.PupilCount, table.StateCount));
        var tilt = isTiltKept && near?.Tilt.Length == axes.Length ? near.Tilt : null;
        if (near is null && table.PupilCount >= Many)
        {
            foreach (var stride in Strides(table.PupilCount / Math.Max(Few, FewForEachLevel * design.Layout.Levels)))
            {
                var part = new BorderSearch(table, design, options, new(table, design.Layout, work, kernel, stride));
                // A part only says where the next search begins, so it need not be exact; but each stands for many, and in standard errors of the whole it is far off anyway.
                var joint = new JointSearch(part, design, sizes, options with { ToleranceSd = Math.Max(options.ToleranceSd, 1e-3) }, axes, _ => { });
                var peak = joint.Find(near, table.PupilCount / stride > Many * 4 ? tilt : null);
                rounds += peak.Rounds / stride;
                // Where a part goes astray, the whole begins at the beginning.
                if (!peak.HasConverged) return Whole(search, null, null, sizes, rounds, progress);
                (near, tilt) = (peak, peak.Tilt);
            }
        }
        return Whole(search, near, tilt, sizes, rounds, progress);
    }

    /// <summary>Every so manieth pupil, search by search: coarse first, and then finer by eight, but a quarter at the most.</summary>
    private static IEnumerable<int> Strides(int first)
    {
        for (var stride = first; stride > 1; stride = stride > 8 ? Math.Max(4, stride / 8) : 1) yield return stride;
    }

    private ScalePeak Whole(BorderSearch search, ScalePeak? near, double[]? tilt, TableSizes sizes, int rounds, Action<double> progress)
    {
        var peak = new JointSearch(search, design, sizes, options, axes, progress).Find(near, tilt);
        return peak with { Rounds = peak.Rounds + rounds };
    }
}
