using Slantwise.Records.Scans.Intake;

namespace Slantwise.Desk.Pages.Scans;

/// <summary>What became of a page, or of a form on it: no mark and no name is in it.</summary>
/// <param name="File">The file's name.</param>
/// <param name="FilePage">The page of the file, from 1.</param>
/// <param name="Kind">What became of it.</param>
/// <param name="LessonId">The lesson; none where that is not known.</param>
/// <param name="PupilId">The pupil; none where that is not known, and of a teacher's sheet.</param>
/// <param name="AddedCount">Entries it added.</param>
/// <param name="WaitingCount">Boxes that wait.</param>
/// <param name="Remarks">What there is to say about it.</param>
public sealed record PileLine(
    string File, int FilePage, PileLineKind Kind, Guid? LessonId, Guid? PupilId, int AddedCount, int WaitingCount, IReadOnlyList<ScanRemark> Remarks)
{
    /// <summary>Whether no code and no known form was found: with the rest of the pile read, its form may be known.</summary>
    public bool IsUntold => Kind == PileLineKind.Unread && Remarks.Any(r => r.Kind == ScanRemarkKind.NoForm);

    /// <summary>The lines of a page that was taken in.</summary>
    /// <param name="page">The page.</param>
    public static IReadOnlyList<PileLine> Of(TakenPage page) => page.Problem is { } problem
        ? [new PileLine(page.File, page.PageNumber, PileLineKind.Unread, null, null, 0, 0, [problem])]
        : [.. page.Forms.Select(form => Of(page, form))];

    /// <summary>The line of a file that was never read.</summary>
    /// <param name="file">The file's name.</param>
    /// <param name="problem">Why.</param>
    public static PileLine Refused(string file, ScanRemark problem) => new(file, 1, PileLineKind.Unread, null, null, 0, 0, [problem]);

    private static PileLine Of(TakenPage page, TakenForm form)
    {
        var scan = form.Scan;
        var kind = (form.IsKept, scan.State) switch
        {
            (false, _) => PileLineKind.Unread,
            (_, ScanState.Waiting) when scan.IsHeld => PileLineKind.Held,
            _ when form is { IsAgain: true, Added.Count: 0 } => PileLineKind.Again,
            (_, ScanState.Waiting) => PileLineKind.Asks,
            _ => PileLineKind.Taken,
        };
        return new PileLine(page.File, page.PageNumber, kind, scan.LessonId, scan.PupilId, form.Added.Count, scan.Waiting.Count(), scan.Remarks);
    }
}
