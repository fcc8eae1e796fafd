using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks;
using static System.FormattableString;

namespace Slantwise.Bench.Accuracy;

/// <summary>Fits the coefficients of the model of marks on simulated pages.</summary>
internal static class ModelFit
{
    // Half a logit of a coefficient costs as much as the doubt about a few fields: enough to hold what the pages say nothing about.
    private const double Ridge = .05;

    /// <summary>Reads pages and writes the coefficients.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="parts">Sets with their seeds and the weight of a field: "fair:10001:520:1".</param>
    /// <param name="threads">How many pages at once.</param>
    public static void Write(TextWriter to, IEnumerable<string> parts, int threads)
    {
        var (rows, marked, weights) = (new List<double[]>(), new List<bool>(), new List<double>());
        foreach (var part in parts.Select(p => p.Split(':')))
        {
            var set = PageSet.All.First(s => s.Name == part[0]);
            var weight = double.Parse(part[3]);
            var pages = new SortedDictionary<ulong, List<(double[] Row, bool IsMarked)>>();
            set.Each(ulong.Parse(part[1]), int.Parse(part[2]), threads, (seed, fault) =>
            {
                var page = SimulatedPage.Of(seed, fault, set.Photo, set.Hand, sheet: set.SheetOf(seed));
                var traits = page.Traits().Fields;
                var read = traits.Zip(page.Truths).Where(f => !f.Second.IsOpen).Select(f => (MarkModel.Terms(f.First).ToArray(), f.Second.IsMarked)).ToList();
                lock (pages) pages[seed] = read;
            });
            // In the order of seeds, so that sums come out the same however many threads there are.
            foreach (var (row, isMarked) in pages.Values.SelectMany(p => p))
            {
                rows.Add(row);
                marked.Add(isMarked);
                weights.Add(weight);
            }
        }
        var fitted = LogisticFit.Of(rows, marked, weights, Ridge);
        to.WriteLine(Invariant($"// {rows.Count} fields, {marked.Count(m => m)} marked"));
        to.WriteLine($"[{string.Join(", ", fitted.Select(c => Invariant($"{c:0.###}")))}]");
    }
}
