using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Live;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Desk.Pages.Results;

/// <summary>Reads a lesson while it is typed in, away from the page's own thread and one look at a time.</summary>
/// <param name="others">Loads the class's lessons; asked once, with the first look.</param>
public sealed class LiveReader(Func<Task<IReadOnlyList<LessonRecord>>> others)
{
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);
    private LiveClass? _live;

    /// <summary>What a lesson's entries say about a pupil.</summary>
    /// <param name="record">The lesson with its entries, the latest.</param>
    /// <param name="pupil">The pupil.</param>
    /// <param name="isInFull">Whether the class is fitted in full, which takes a moment, or quickly.</param>
    /// <param name="cancel">Gives the look up, as when something was typed since.</param>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public async Task<LiveView> LookAsync(LessonRecord record, Pupil pupil, bool isInFull, CancellationToken cancel)
    {
        await _oneAtATime.WaitAsync(cancel);
        try
        {
            var work = new ResponseWork(Cancellation: cancel);
            var known = _live is null ? await others() : [];
            return await Task.Run(
                () =>
                {
                    var live = _live ??= LiveClass.Of(record with { Entries = [] }, known, work);
                    live.Follow(record.Entries);
                    if (isInFull) live.Settle(work);
                    return LiveView.Of(live, record.Sheet!.Content, pupil);
                },
                cancel);
        }
        finally
        {
            _oneAtATime.Release();
        }
    }
}
