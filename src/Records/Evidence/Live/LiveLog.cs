using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence.Live;

/// <summary>The entries of a lesson as they came in, found by pupil. The order they came in, and how often each came, leave no trace.</summary>
internal sealed class LiveLog(Guid lessonId)
{
    private readonly Dictionary<Guid, Entry> _byId = [];
    private readonly Dictionary<Guid, HashSet<Guid>> _idsByPupil = [];
    private readonly Dictionary<Guid, HashSet<Guid>> _correctorsById = [];

    public int Count => _byId.Count;

    /// <summary>Takes an entry.</summary>
    /// <param name="entry">Any entry; one of another lesson is passed over.</param>
    /// <param name="touched">Gets the pupils whose own part may read otherwise now.</param>
    public void Take(Entry entry, ISet<Guid> touched)
    {
        if (entry.LessonId != lessonId) return;
        // The store's word on when it was received beats a copy from before it was stored.
        if (_byId.TryGetValue(entry.Id, out var known) && !(known.ReceivedAt is null && entry.ReceivedAt is not null)) return;
        _byId[entry.Id] = entry;
        if (entry.PupilId is { } pupil)
        {
            Among(_idsByPupil, pupil).Add(entry.Id);
            touched.Add(pupil);
        }
        if (entry.SupersedesId is { } before)
        {
            Among(_correctorsById, before).Add(entry.Id);
            if (_byId.GetValueOrDefault(before)?.PupilId is { } corrected) touched.Add(corrected);
        }
    }

    public bool Holds(Guid entryId) => _byId.ContainsKey(entryId);

    /// <summary>A pupil's entries, and those of others that correct them.</summary>
    public IReadOnlyList<Entry> Of(Guid pupilId)
    {
        if (!_idsByPupil.TryGetValue(pupilId, out var own)) return [];
        var correctors = own.SelectMany(id => _correctorsById.TryGetValue(id, out var by) ? by : []).Where(id => !own.Contains(id));
        return [.. own.Concat(correctors.Distinct()).Select(id => _byId[id])];
    }

    private static HashSet<Guid> Among(Dictionary<Guid, HashSet<Guid>> sets, Guid key)
    {
        if (!sets.TryGetValue(key, out var found)) sets[key] = found = [];
        return found;
    }
}
