using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Floor.Rooms;

namespace Slantwise.Records.Floor;

/// <content>Taking entries.</content>
public sealed partial class FloorRoom
{
    // A pupil may be erased between looking and writing; each time round the lesson is looked at anew.
    private const int MostAttempts = 3;

    // What is refused is refused by the lesson as it is now, not as it was when the room was opened.
    private static readonly TimeSpan FreshFor = TimeSpan.FromSeconds(1);

    private LessonKnowledge Knowledge
    {
        get { lock (_lock) return _knowledge; }
    }

    /// <summary>Takes a batch: what can be taken is durable when it answers, and what cannot holds nothing else up.</summary>
    /// <exception cref="FloorRefusal">The store could not take it now; the lesson is no longer here.</exception>
    internal async Task<(IReadOnlyList<Guid> TakenIds, IReadOnlyList<RefusedEntry> Refused)> TakeAsync(
        string deviceId, IReadOnlyList<Entry> entries, CultureInfo language, CancellationToken cancel)
    {
        for (var attempt = 1; ; attempt++)
        {
            var batch = await CheckAsync(deviceId, entries, mustBeFresh: attempt > 1, cancel);
            IReadOnlySet<Guid> added;
            try
            {
                added = batch.New.Count == 0 ? new HashSet<Guid>() : await _commit.AppendAsync(Lesson.SchoolId, batch.New);
            }
            catch (ArgumentException) when (attempt < MostAttempts)
            {
                continue;
            }
            catch (Exception failure) when (failure is not OperationCanceledException)
            {
                throw new FloorRefusal(FloorProblemKind.Busy, failure);
            }
            var (taken, foreign) = await LearnAsync(batch, added, cancel);
            return ([.. entries.Select(e => e.Id).Where(id => taken.Contains(id) || batch.TakenIds.Contains(id)).Distinct()],
                [.. batch.Refused.Concat(foreign).Select(r => new RefusedEntry(r.Id, r.Finding.Key, r.Finding.Sentence(language)))]);
        }
    }

    private async Task<CheckedBatch> CheckAsync(string deviceId, IReadOnlyList<Entry> entries, bool mustBeFresh, CancellationToken cancel)
    {
        if (mustBeFresh) await RenewAsync(withFormer: true, cancel);
        var batch = Knowledge.Check(entries, FindDevice(deviceId)!);
        // Not for every bad entry that a device sends again and again.
        if (mustBeFresh || batch.Refused.Count == 0 || Clock.GetUtcNow() - Knowledge.At < FreshFor && Knowledge.HasFormer) return batch;
        await RenewAsync(withFormer: true, cancel);
        return Knowledge.Check(entries, FindDevice(deviceId)!);
    }

    private async Task<(HashSet<Guid> Taken, IEnumerable<(Guid Id, Checks.Finding Finding)> Foreign)> LearnAsync(
        CheckedBatch batch, IReadOnlySet<Guid> added, CancellationToken cancel)
    {
        if (batch.New.Count == 0) return ([], []);
        var mine = batch.New.Where(e => added.Contains(e.Id)).ToList();
        if (mine.Count > 0) Publish(mine, isUrgent: batch.HasRemovedLevel);
        var taken = mine.Select(e => e.Id).ToHashSet();
        var others = batch.New.Where(e => !taken.Contains(e.Id)).ToList();
        if (others.Count == 0) return (taken, []);

        // Here already, and not by this room's hand: another batch of this commit, another way in, or another lesson's entry under the same id.
        if (!others.All(e => Knowledge.Holds(e.Id))) await RenewAsync(withFormer: Knowledge.HasFormer, cancel);
        var knowledge = Knowledge;
        taken.UnionWith(others.Where(e => knowledge.Holds(e)).Select(e => e.Id));
        return (taken, others.Where(e => !taken.Contains(e.Id)).Select(e => (e.Id, knowledge.IdTaken(e))).ToList());
    }

    /// <summary>Makes durable entries known, and tells the teacher's devices of those that are new.</summary>
    private void Publish(IReadOnlyList<Entry> entries, bool isUrgent)
    {
        lock (_lock)
        {
            var fresh = _knowledge.Learn(entries);
            if (!_isFollowing) return;
            // The store's own instant lies between asking and answering; this one is a moment later and in the same order.
            var at = Clock.GetUtcNow();
            _log.AddRange(fresh.Select(e => e.ReceivedAt is null ? e with { ReceivedAt = at } : e));
            if (fresh.Count == 0) return;
            foreach (var watch in _watches.Where(w => w.IsTeachers)) watch.Wake();
        }
        if (isUrgent) _urgent.Writer.TryWrite(true);
    }

    /// <summary>Looks at the lesson anew: pupils, restrictions, sheet, entries by whatever way they came.</summary>
    /// <exception cref="FloorRefusal">The lesson is no longer here.</exception>
    private async Task RenewAsync(bool withFormer, CancellationToken cancel)
    {
        var loaded = await LessonKnowledge.LoadAsync(_store, Lesson.SchoolId, Lesson.LessonId, withFormer || Knowledge.HasFormer, Clock, cancel)
            ?? throw new FloorRefusal(FloorProblemKind.TokenInvalid);
        lock (_lock)
        {
            // Durable since the question was asked, and told already.
            if (_isFollowing) loaded.Knowledge.Learn(_log.Where(e => e.ReceivedAt >= loaded.Knowledge.At));
            var isErased = _isFollowing && _log.Any(e => !loaded.Knowledge.Holds(e.Id));
            var told = _isFollowing ? _log.Select(e => e.Id).ToHashSet() : [];
            _knowledge = loaded.Knowledge.SameRecordAs(_knowledge);
            if (!_isFollowing) return;
            if (isErased)
            {
                (_log, _logVersion) = ([.. _log.Where(e => _knowledge.Holds(e.Id))], _logVersion + 1);
            }
            var fresh = loaded.Entries.Where(e => !told.Contains(e.Id)).ToList();
            _log.AddRange(fresh);
            if (fresh.Count == 0 && !isErased) return;
            foreach (var watch in _watches.Where(w => w.IsTeachers)) watch.Wake();
        }
        _urgent.Writer.TryWrite(true);
    }
}
