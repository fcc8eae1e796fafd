using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Schools;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>The pages of a lesson: whose, what waits, who has none.</summary>
public sealed class PileOverview
{
    private readonly IReadOnlyList<Scan> _scans;

    private PileOverview(IReadOnlyList<Scan> scans, IReadOnlyList<PileRow> rows) => (_scans, Rows) = (scans, rows);

    /// <summary>The class, by label.</summary>
    public IReadOnlyList<PileRow> Rows { get; }

    /// <summary>Pages of which something has to be said or done first.</summary>
    public IReadOnlyList<Scan> Held => [.. _scans.Where(s => s.State == ScanState.Waiting && s.IsHeld)];

    /// <summary>The teacher's own sheets that were read.</summary>
    public IReadOnlyList<Scan> Observations => [.. _scans.Where(s => s.IsObservation && !s.IsHeld)];

    /// <summary>Pages that were read.</summary>
    public int PageCount => _scans.Count(s => !s.IsFaulty);

    /// <summary>Pupils with a page that was read.</summary>
    public int PupilCount => Rows.Count(r => r.Scans.Count > 0);

    /// <summary>Boxes that wait for a person, on pages that are not held back.</summary>
    public int WaitingCount => _scans.Where(s => !s.IsHeld).Sum(s => s.Waiting.Count());

    /// <summary>Boxes a person has looked at.</summary>
    public int AnsweredCount => _scans.Sum(s => s.Items.Count(i => i.Answer is not null));

    /// <summary>Seconds by hand that nobody has typed yet.</summary>
    public int SecondsCount => _scans.Where(s => !s.IsHeld).Sum(s => s.Items.Count(i => i is { Doubt: ScanDoubt.ByHand, Answer: null }));

    /// <summary>Pupils who were there and have no page.</summary>
    public IReadOnlyList<Pupil> Missing => [.. Rows.Where(r => r is { Scans.Count: 0, IsAbsent: false }).Select(r => r.Pupil)];

    /// <summary>Whether nothing of the lesson was read.</summary>
    public bool IsEmpty => _scans.Count == 0;

    /// <summary>The overview.</summary>
    /// <param name="record">The lesson.</param>
    /// <param name="scans">Its scans; those thrown away are passed over.</param>
    public static PileOverview Of(LessonRecord record, IReadOnlyList<Scan> scans)
    {
        List<Scan> known = [.. scans.Where(s => s.State != ScanState.Discarded)];
        var absent = EntryLog.Current(record.Entries).Where(e => e.Fact is Presence { IsPresent: false }).Select(e => e.PupilId).ToHashSet();
        var byPupil = known.Where(s => s.PupilId is not null && !s.IsHeld).ToLookup(s => s.PupilId!.Value);
        List<int> pages = [.. known.Where(s => s is { IsObservation: false, SheetPage: not null, IsFaulty: false }).Select(s => s.SheetPage!.Value).Distinct().Order()];
        return new PileOverview(known, [.. record.Pupils.Select(pupil =>
        {
            List<Scan> own = [.. byPupil[pupil.Id].OrderBy(s => s.SheetPage)];
            List<int> missing = own.Count == 0 ? [] : [.. pages.Except(own.Select(s => s.SheetPage ?? 1))];
            return new PileRow(pupil, own, missing, absent.Contains(pupil.Id));
        })]);
    }
}
