using System.Runtime.CompilerServices;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Scans;
using Slantwise.Records;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Scanning;

/// <summary>Reads what was sent, one pile at a time whoever sent it: a page that two piles hold is then read once.</summary>
internal sealed class PileReading(IStore store, IPageReader reader, TimeProvider clock, PileShelf shelf)
{
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);

    /// <summary>Reads files; each line is on the shelf before it is given.</summary>
    /// <param name="schoolId">The school.</param>
    /// <param name="pileId">The pile they belong to.</param>
    /// <param name="lessonId">The lesson all pages should belong to; none to let each say.</param>
    /// <param name="isAgain">Whether files without a known form are sent once more, now that the pile's other files are read.</param>
    /// <param name="files">The files.</param>
    /// <param name="cancel">Stops between pages.</param>
    public async IAsyncEnumerable<PileLine> ReadAsync(
        Guid schoolId, Guid pileId, Guid? lessonId, bool isAgain, IReadOnlyList<SpooledFile> files, [EnumeratorCancellation] CancellationToken cancel)
    {
        await _oneAtATime.WaitAsync(cancel);
        try
        {
            // Without a lesson there is only the pile to tell which one a page without a code belongs to.
            var lesson = lessonId ?? (isAgain ? Commonest(shelf.LinesOf(pileId)) : null);
            if (isAgain) foreach (var file in files) shelf.ForgetUntold(pileId, file.Name);
            foreach (var file in files.Where(f => f.Problem is not null)) yield return Kept(PileLine.Refused(file.Name, file.Problem!));
            var intake = new PileIntake(store, reader, schoolId, clock);
            await foreach (var page in intake.TakeAsync(files.Where(f => f.Problem is null).Select(f => f.ToScanFile()), new IntakeOptions { LessonId = lesson }, cancel))
            {
                foreach (var line in PileLine.Of(page)) yield return Kept(line);
            }
        }
        finally
        {
            _oneAtATime.Release();
        }

        PileLine Kept(PileLine line)
        {
            shelf.Add(pileId, line);
            return line;
        }
    }

    private static Guid? Commonest(IEnumerable<PileLine> lines) => lines
        .Where(l => l.Kind != PileLineKind.Unread && l.LessonId is not null)
        .GroupBy(l => l.LessonId)
        .OrderByDescending(g => g.Count())
        .FirstOrDefault()?.Key;
}
