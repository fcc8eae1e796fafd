using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Measures;
using static System.FormattableString;

namespace Slantwise.Bench.Accuracy;

/// <summary>What was counted, as tables for the page of the docs.</summary>
internal static class StudyTables
{
    public static void Write(TextWriter to, PageSet set, ulong first, int count, Study study)
    {
        to.WriteLine(Invariant($"## {set.Name}: {count} pages, seeds {first} to {first + (ulong)count - 1}, photo {set.Photo}, hand {set.Hand}"));
        to.WriteLine();
        Table(to, "fault", study.ByFault, study.All, withPages: true);
        Table(to, "mark, trouble", study.ByMark, study.All, withPages: false);
        Table(to, "pen", study.ByPen, study.All, withPages: false);
        to.WriteLine("| refused because | pages |\n|---|---|");
        foreach (var (fault, pages) in study.Refusals.OrderBy(r => r.Key))
            if (fault != PageFault.None) to.WriteLine(Invariant($"| {fault} | {pages} |"));
        to.WriteLine("\n| chance given | fields | mean given | share marked | 95 in 100 |\n|---|---|---|---|---|");
        foreach (var bin in study.Bins.Where(b => b.Fields > 0))
        {
            var (low, high) = ShareRange.Wilson(bin.Marked, bin.Fields);
            to.WriteLine(Invariant($"| {bin.FromFraction:0.####} to {bin.ToFraction:0.####} | {bin.Fields} | {bin.MeanFraction:0.00000} | {(double)bin.Marked / bin.Fields:0.00000} | {low:0.00000} to {high:0.00000} |"));
        }
        to.WriteLine();
    }

    private static void Table(TextWriter to, string what, SortedDictionary<string, Tally> tallies, Tally all, bool withPages)
    {
        to.WriteLine(withPages ? $"| {what} | pages | refused | fields | false marks | missed marks | below, in 100,000 | doubtful in 100 |\n|---|---|---|---|---|---|---|---|"
            : $"| {what} | fields | false marks | missed marks | below, in 100,000 | doubtful in 100 |\n|---|---|---|---|---|---|");
        foreach (var (name, tally) in tallies.Append(new("all", all)))
        {
            if (tally.Fields + tally.Open + tally.Pages == 0) continue;
            var pages = withPages ? Invariant($" {tally.Pages} | {tally.RefusedPages} |") : "";
            var open = tally.Open > 0 ? Invariant($" (and {tally.Open} open, {tally.OpenDoubtful} of them doubtful)") : "";
            to.WriteLine(Invariant($"| {name} |{pages} {tally.Fields}{open} | {tally.FalseMarks} | {tally.MissedMarks} | {100_000 * ShareRange.Below(tally.SilentWrong, tally.Fields):0.#} | {100 * tally.DoubtfulFraction:0.00} |"));
        }
        to.WriteLine();
    }
}
