using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Schools;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>A pupil's pages in a lesson.</summary>
/// <param name="Pupil">The pupil.</param>
/// <param name="Scans">The pages, by their number; none where no page came. Those held back are not among them.</param>
/// <param name="MissingPages">Pages that others have and this pupil has not, where there is one at all.</param>
/// <param name="IsAbsent">Whether the pupil is marked absent.</param>
public sealed record PileRow(Pupil Pupil, IReadOnlyList<Scan> Scans, IReadOnlyList<int> MissingPages, bool IsAbsent)
{
    /// <summary>Boxes whose mark or answer holds.</summary>
    public int TakenCount => Scans.Sum(s => s.Items.Count(i => i.Settled is not null));

    /// <summary>Boxes that wait for a person.</summary>
    public int WaitingCount => Scans.Sum(s => s.Waiting.Count());
}
