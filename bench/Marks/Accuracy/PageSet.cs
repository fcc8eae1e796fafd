using Slantwise.Surface.Tests.Marks;
using Slantwise.Surface.Tests.Marks.Forms;
using Slantwise.Surface.Tests.Marks.Photos;
using Slantwise.Surface.Tests.Marks.Photos.Faults;

namespace Slantwise.Bench.Accuracy;

/// <summary>Pages of one kind: every fault in turn, each page with the next seed.</summary>
/// <param name="Name">What the report calls it.</param>
/// <param name="Photo">How bad the photos are.</param>
/// <param name="Hand">How careless the children are.</param>
/// <param name="IsOurs">Whether the forms are our own task sheets; otherwise plain ones that differ from seed to seed.</param>
internal sealed record PageSet(string Name, Severity Photo, Severity Hand, bool IsOurs = false)
{
    public static IReadOnlyList<PageSet> All { get; } =
    [
        new("fair", Severity.Fair, Severity.Fair), new("hands", Severity.Fair, Severity.Hard), new("hard", Severity.Hard, Severity.Fair),
        new("beyond", Severity.Beyond, Severity.Fair), new("sheets", Severity.Fair, Severity.Fair, true), new("sheets-hard", Severity.Hard, Severity.Fair, true),
    ];

    private static readonly Lazy<TaskSheets> Sheets = new();

    /// <summary>What is printed for a seed; none for a plain form.</summary>
    public PrintedSheet? SheetOf(ulong seed) => IsOurs ? Sheets.Value.All[(int)(Luck.Mixed(seed) % (ulong)Sheets.Value.All.Count)] : null;

    public static void CleanUp()
    {
        if (Sheets.IsValueCreated) Sheets.Value.Dispose();
    }

    /// <summary>Works on each page. Where the work throws, the page is named before the program ends.</summary>
    public void Each(ulong first, int count, int threads, Action<ulong, Fault> work) => Parallel.For(
        0, count, new ParallelOptions { MaxDegreeOfParallelism = threads }, i =>
        {
            var (seed, isDone) = (first + (ulong)i, false);
            var fault = AllFaults.InOrder[(int)(seed % (ulong)AllFaults.InOrder.Count)];
            try
            {
                work(seed, fault);
                isDone = true;
            }
            finally
            {
                if (!isDone) Console.Error.WriteLine($"thrown at seed {seed}, {fault.Name}, {Name}");
            }
        });
}
