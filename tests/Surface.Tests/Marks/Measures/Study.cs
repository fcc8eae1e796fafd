using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;
using Slantwise.Surface.Tests.Marks.Photos;

namespace Slantwise.Surface.Tests.Marks.Measures;

/// <summary>Reads simulated pages and counts, by fault, by kind of mark, by pen and by the chance that was given.</summary>
internal sealed class Study
{
    public SortedDictionary<string, Tally> ByFault { get; } = new(StringComparer.Ordinal);

    public SortedDictionary<string, Tally> ByMark { get; } = new(StringComparer.Ordinal);

    public SortedDictionary<string, Tally> ByPen { get; } = new(StringComparer.Ordinal);

    public Dictionary<PageFault, int> Refusals { get; } = [];

    public ReliabilityBin[] Bins { get; } = ReliabilityBin.Usual();

    public List<WrongField> SilentWrong { get; } = [];

    public List<WrongField> DoubtfulOnes { get; } = [];

    public Tally All { get; } = new();

    public void Read(ulong seed, Fault fault, Severity severity, Severity hand, PrintedSheet? sheet = null)
    {
        var page = SimulatedPage.Of(seed, fault, severity, hand, sheet: sheet);
        Add(page, page.Read(), seed, fault.Name, severity, hand);
    }

    // From several threads at once: a page is read outside, counted inside.
    private void Add(SimulatedPage page, FormReading reading, ulong seed, string fault, Severity severity, Severity hand)
    {
        lock (All)
        {
            var isRefused = reading.Fault != PageFault.None;
            Refusals[reading.Fault] = Refusals.GetValueOrDefault(reading.Fault) + 1;
            All.AddPage(isRefused);
            Of(ByFault, fault).AddPage(isRefused);
            var contested = Contested(page.Form, reading);
            for (var i = 0; i < reading.Fields.Count && !isRefused; i++)
            {
                var (truth, field) = (page.Truths[i], reading.Fields[i]);
                if (contested.Contains(page.Form.Fields[i].Group)) field = field with { Verdict = MarkVerdict.Doubtful };
                All.AddField(truth, field.Verdict);
                Of(ByFault, fault).AddField(truth, field.Verdict);
                Of(ByMark, $"{truth.Style}, {truth.Trouble}").AddField(truth, field.Verdict);
                Of(ByPen, page.Pen.Name).AddField(truth, field.Verdict);
                if (truth.IsOpen) continue;
                ReliabilityBin.Add(Bins, field.MarkedFraction, truth.IsMarked);
                var wrong = new WrongField(seed, fault, severity, hand, field.Key, truth, field, page.Pen.Name);
                if (field.Verdict == MarkVerdict.Doubtful) DoubtfulOnes.Add(wrong);
                else if (field.Verdict == MarkVerdict.Marked != truth.IsMarked) SilentWrong.Add(wrong);
            }
        }
    }

    // Two choices where one is possible are never taken: whoever reviews the pile is asked which. So none of that group counts as read.
    private static HashSet<string> Contested(SheetLayout form, FormReading reading) =>
    [
        .. form.Fields.Zip(reading.Fields).Where(f => f.First.Group.Length > 0 && f.Second.Verdict == MarkVerdict.Marked)
            .GroupBy(f => f.First.Group).Where(g => g.Count() > 1).Select(g => g.Key),
    ];

    private static Tally Of(SortedDictionary<string, Tally> tallies, string name) =>
        tallies.TryGetValue(name, out var tally) ? tally : tallies[name] = new();
}
