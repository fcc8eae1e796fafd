using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    /// <exception cref="ArgumentException">An entry of another school; a lesson or pupil that is not here; two entries with one id in the batch.</exception>
    public async Task<AppendOutcome> AppendEntriesAsync(Guid schoolId, IReadOnlyList<Entry> entries, CancellationToken cancel = default)
    {
        if (entries.FirstOrDefault(e => e.SchoolId != schoolId) is { } stranger)
            throw new ArgumentException($"Entry {stranger.Id} belongs to another school. Nothing was added.", nameof(entries));
        if (entries.GroupBy(e => e.Id).FirstOrDefault(g => g.Count() > 1) is { } twins)
            throw new ArgumentException($"Two entries of the batch have the id {twins.Key}. Nothing was added.", nameof(entries));
        if (entries.Count == 0) return new AppendOutcome([], 0);

        return await WriteAsync(async context =>
        {
            var lastOrders = await LastOrdersAsync(context, schoolId, entries, cancel);
            await RefuseUnknownPupilsAsync(context, schoolId, entries, cancel);
            var receivedAt = _clock.GetUtcNow();
            var rows = entries.Select(e => EntryRows.Of(e, receivedAt, ++lastOrders[e.LessonId])).ToList();
            var added = await context.AddNewAsync(rows, cancel);
            return new AppendOutcome(entries.Select(e => e.Id).Where(added.Contains).ToList(), entries.Count - added.Count);
        }, cancel);
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyList<Entry>> ListEntriesAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default)
    {
        await using var context = await OpenContextAsync(cancel);
        var rows = await context.Entries
            .Where(e => e.SchoolId == schoolId && e.LessonId == lessonId)
            .OrderBy(e => e.ReceivedOrder)
            .ToListAsync(cancel);
        return rows.ConvertAll(EntryRows.EntryOf);
    }

    private static async Task<Dictionary<Guid, long>> LastOrdersAsync(
        SchoolContext context, Guid schoolId, IReadOnlyList<Entry> entries, CancellationToken cancel)
    {
        var lessonIds = entries.Select(e => e.LessonId).Distinct().ToArray();
        // Held until the commit, so that numbers become visible in their order: whoever reads on from the last number
        // it saw misses nothing.
        await context.HoldAsync<Lesson>(schoolId, lessonIds, cancel);
        var lastOrders = await context.Lessons
            .Where(l => l.SchoolId == schoolId && lessonIds.Contains(l.Id))
            .Select(l => new
            {
                l.Id,
                Last = context.Entries.Where(e => e.SchoolId == schoolId && e.LessonId == l.Id).Max(e => (long?)e.ReceivedOrder) ?? 0,
            })
            .ToDictionaryAsync(l => l.Id, l => l.Last, cancel);
        return lessonIds.Where(id => !lastOrders.ContainsKey(id)).ToList() is [var missing, ..]
            ? throw new ArgumentException($"An entry is for the lesson {missing}, which this school does not have. Nothing was added.", nameof(entries))
            : lastOrders;
    }

    private static async Task RefuseUnknownPupilsAsync(
        SchoolContext context, Guid schoolId, IReadOnlyList<Entry> entries, CancellationToken cancel)
    {
        var pupilIds = entries.Where(e => e.PupilId is not null).Select(e => e.PupilId!.Value).Distinct().ToArray();
        if (pupilIds.Length == 0) return;
        var known = await context.Pupils.Where(p => p.SchoolId == schoolId && pupilIds.Contains(p.Id)).Select(p => p.Id).ToListAsync(cancel);
        if (pupilIds.Except(known).ToList() is [var missing, ..])
            throw new ArgumentException($"An entry is about the pupil {missing}, whom this school does not have. Nothing was added.", nameof(entries));
    }
}
