using System.Data.Common;
using System.Threading.Channels;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Floor.Rooms;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Floor;

/// <content>What is done only while a teacher listens: noticing what came by other ways, and finding questions.</content>
public sealed partial class FloorRoom
{
    // The store is asked what it has about once a second; less often where many rooms ask.
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan RenewEvery = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan AskEvery = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan AnnouncedWithin = TimeSpan.FromMilliseconds(50);

    private readonly Channel<bool> _urgent = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
    private readonly LiveQuestions _live;
    private List<Entry> _log = [];
    private IReadOnlyList<Conference> _questions = [];
    private CancellationTokenSource? _following;
    private bool _isFollowing;
    private long _logVersion, _questionsVersion, _askedLogVersion = -1;
    private int _askedEntryCount;

    private void StartFollowingLocked()
    {
        if (_following is not null) return;
        _following = new CancellationTokenSource();
        var until = _following.Token;
        _ = Task.Run(() => FollowAsync(until), CancellationToken.None);
    }

    private void StopFollowingLocked()
    {
        _following?.Cancel();
        (_following, _isFollowing, _log, _logVersion, _questions) = (null, false, [], _logVersion + 1, []);
    }

    private async Task FollowAsync(CancellationToken cancel)
    {
        var (renewedAt, askedAt) = (DateTimeOffset.MinValue, DateTimeOffset.MinValue);
        while (!cancel.IsCancellationRequested)
        {
            try
            {
                var isUrgent = _urgent.Reader.TryRead(out _);
                await _side.DoAsync(
                    async () =>
                    {
                        var now = Clock.GetUtcNow();
                        if (now - renewedAt >= RenewEvery || await HasOthersAsync(cancel))
                        {
                            await RenewFollowingAsync(cancel);
                            renewedAt = now;
                        }
                        if (!isUrgent && now - askedAt < AskEvery) return;
                        await AskAsync(cancel);
                        askedAt = now;
                    },
                    cancel);
            }
            catch (Exception failure) when (failure is DbException or IOException or TimeoutException or InvalidOperationException or FloorRefusal)
            {
                // The store is asked again in a moment; what is acknowledged does not depend on this.
            }
            catch (OperationCanceledException) when (cancel.IsCancellationRequested)
            {
                return;
            }
            using var over = CancellationTokenSource.CreateLinkedTokenSource(cancel);
            await Task.WhenAny(_urgent.Reader.WaitToReadAsync(over.Token).AsTask(), Task.Delay(LookEvery, Clock, over.Token));
            await over.CancelAsync();
        }
    }

    // Entries from the desk, from paper or from another program, or some that are no longer there.
    private async Task<bool> HasOthersAsync(CancellationToken cancel)
    {
        var (knowledge, countBefore) = (Knowledge, Knowledge.EntryCount);
        var stamps = await _store.ListLessonStampsAsync(Lesson.SchoolId, knowledge.Record.Class.Id, cancel);
        if (stamps.FirstOrDefault(s => s.LessonId == Lesson.LessonId) is not { } stamp) return false;
        if (stamp.FrozenAt != knowledge.Record.Sheet?.FrozenAt || stamp.EntryCount < countBefore) return true;
        if (stamp.EntryCount <= Knowledge.EntryCount) return false;
        // A commit of this program that is not announced yet is the likeliest: it is in a moment.
        await Task.Delay(AnnouncedWithin, Clock, cancel);
        return stamp.EntryCount > Knowledge.EntryCount;
    }

    private async Task RenewFollowingAsync(CancellationToken cancel)
    {
        // From here on what arrives is also kept; what was there before comes with the first look.
        lock (_lock)
        {
            if (cancel.IsCancellationRequested) return;
            _isFollowing = true;
        }
        await RenewAsync(withFormer: false, cancel);
    }

    private async Task AskAsync(CancellationToken cancel)
    {
        LessonRecord record;
        IReadOnlyList<Entry> log;
        IReadOnlyList<Entry>? fresh;
        lock (_lock)
        {
            if (!_isFollowing) return;
            (record, log) = (_knowledge.Record, [.. _log]);
            fresh = _askedLogVersion == _logVersion ? [.. _log.Skip(_askedEntryCount)] : null;
            var isErased = _askedLogVersion >= 0 && fresh is null;
            if (isErased) _live.Forget();
            (_askedLogVersion, _askedEntryCount) = (_logVersion, _log.Count);
        }
        if (!await _live.FollowAsync(record, log, fresh, cancel)) return;
        lock (_lock)
        {
            (_questions, _questionsVersion) = (_live.All, _questionsVersion + 1);
            foreach (var watch in _watches.Where(w => w.IsTeachers)) watch.Wake();
        }
    }
}
