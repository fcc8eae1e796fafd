using System.Runtime.CompilerServices;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Records.Tests.Scans.Intake;

/// <summary>A reader that gives the pages a test planned for each file, and remembers what it was told to expect.</summary>
internal sealed class PlannedReader(Func<string, ExpectedForms, IEnumerable<ReadPage>> pages) : IPageReader
{
    public async IAsyncEnumerable<ReadPage> ReadAsync(ScanFile file, ExpectedForms expected, [EnumeratorCancellation] CancellationToken cancel = default)
    {
        await Task.Yield();
        foreach (var page in pages(file.Name, expected)) yield return page;
    }
}
