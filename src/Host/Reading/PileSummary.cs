using Slantwise.Host.Words;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Reading;

/// <summary>What became of a pile.</summary>
internal sealed class PileSummary
{
    /// <summary>Forms that were read, whether they said something new or not.</summary>
    public int ReadCount { get; private set; }

    /// <summary>Pages and forms that could not be read or belong elsewhere.</summary>
    public int UnreadCount { get; private set; }

    /// <summary>Entries added.</summary>
    public int AddedCount { get; private set; }

    /// <summary>Forms that wait for a person.</summary>
    public int WaitingCount { get; private set; }

    public void Add(TakenPage page)
    {
        if (page.Problem is not null) UnreadCount++;
        foreach (var form in page.Forms)
        {
            if (form.IsKept && !form.Scan.IsFaulty) ReadCount++;
            else UnreadCount++;
            AddedCount += form.Added.Count;
            if (form.IsKept && form.Scan.State == ScanState.Waiting) WaitingCount++;
        }
    }

    public string Sentence(bool isDryRun) => HostWords.Say(isDryRun ? "PileWouldBeRead" : "PileRead", ReadCount, AddedCount, WaitingCount, UnreadCount);
}
