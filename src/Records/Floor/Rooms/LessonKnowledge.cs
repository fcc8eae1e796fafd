using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>What a room knows of its lesson for checking entries: everything but the entries themselves, of which it knows the ids.</summary>
internal sealed class LessonKnowledge
{
    private readonly Lock _lock = new();
    private readonly Dictionary<Guid, KnownEntry> _known;
    private readonly EntryLookup _lookup;

    private LessonKnowledge(LessonRecord record, HashSet<Guid> formerPupilIds, bool hasFormer, Dictionary<Guid, KnownEntry> known, DateTimeOffset at)
    {
        (Record, FormerPupilIds, HasFormer, _known, At) = (record, formerPupilIds, hasFormer, known, at);
        _lookup = new EntryLookup(Record);
    }

    /// <summary>The lesson without entries. Those of its pupils who left the class since are among them once they were asked for.</summary>
    public LessonRecord Record { get; }

    public HashSet<Guid> FormerPupilIds { get; }

    /// <summary>Whether it was asked who has left the class.</summary>
    public bool HasFormer { get; }

    /// <summary>When it was loaded.</summary>
    public DateTimeOffset At { get; }

    public int EntryCount
    {
        get { lock (_lock) return _known.Count; }
    }

    /// <summary>Loads it; none if the school has no such lesson.</summary>
    public static async Task<(LessonKnowledge Knowledge, IReadOnlyList<Entry> Entries)?> LoadAsync(
        IStore store, Guid schoolId, Guid lessonId, bool withFormer, TimeProvider clock, CancellationToken cancel)
    {
        var at = clock.GetUtcNow();
        if (await LessonRecord.LoadAsync(store, schoolId, lessonId, cancel) is not { } record) return null;
        var entries = record.Entries;
        HashSet<Guid> former = [];
        if (withFormer)
        {
            // A tablet may deliver after a pupil has changed class: what happened in the lesson still happened.
            former = (await store.ListEnrolmentsAsync(schoolId, cancel)).Where(e => e.ClassId == record.Class.Id && !e.IsCurrent).Select(e => e.PupilId).ToHashSet();
            if (former.Count > 0) record = record with { Pupils = [.. record.Pupils, .. (await store.ListPupilsAsync(schoolId, cancel)).Where(p => former.Contains(p.Id))] };
        }
        return (new LessonKnowledge(record with { Entries = [] }, former, withFormer, entries.ToDictionary(e => e.Id, KnownEntry.Of), at), entries);
    }

    /// <summary>Itself, with the record of an older one where they say the same: whoever holds on to that need not start anew.</summary>
    public LessonKnowledge SameRecordAs(LessonKnowledge older)
    {
        var (mine, its) = (Record, older.Record);
        var isSame = ClassAround.Of(mine).IsSameAs(ClassAround.Of(its)) && mine.Sheet?.Version == its.Sheet?.Version && mine.Sheet?.SheetId == its.Sheet?.SheetId && mine.Lesson.Date == its.Lesson.Date;
        return isSame ? new LessonKnowledge(its, FormerPupilIds, HasFormer, _known, At) : this;
    }

    public bool Holds(Guid entryId)
    {
        lock (_lock) return _known.ContainsKey(entryId);
    }

    /// <summary>Whether this very entry is here, and not another with its id.</summary>
    public bool Holds(Entry entry)
    {
        lock (_lock) return _known.TryGetValue(entry.Id, out var known) && known == KnownEntry.Of(entry);
    }

    public Finding IdTaken(Entry entry) => Finding.Refused("EntryIdTaken", PlaceOf(entry), entry.Id);

    /// <summary>Makes entries known.</summary>
    /// <returns>Those that were not.</returns>
    public IReadOnlyList<Entry> Learn(IEnumerable<Entry> entries)
    {
        lock (_lock) return [.. entries.Where(e => _known.TryAdd(e.Id, KnownEntry.Of(e)))];
    }

    /// <summary>Sorts a batch: what is here already, what is to be appended, what cannot be taken.</summary>
    public CheckedBatch Check(IReadOnlyList<Entry> entries, FloorDevice device)
    {
        var sorted = new CheckedBatch();
        lock (_lock)
        {
            foreach (var entry in entries)
            {
                if (_known.TryGetValue(entry.Id, out var known) || sorted.Own.TryGetValue(entry.Id, out known))
                {
                    if (known == KnownEntry.Of(entry)) sorted.TakenIds.Add(entry.Id);
                    else sorted.Refused.Add((entry.Id, IdTaken(entry)));
                    continue;
                }
                if (Against(entry, device, sorted) is { } refusal)
                {
                    sorted.Refused.Add((entry.Id, refusal));
                    continue;
                }
                sorted.New.Add(entry with { ReceivedAt = null });
                sorted.Own[entry.Id] = KnownEntry.Of(entry);
            }
        }
        return sorted;
    }

    private Finding? Against(Entry entry, FloorDevice device, CheckedBatch sorted)
    {
        KnownEntry? corrected = null;
        if (entry.SupersedesId is { } id && (_known.TryGetValue(id, out var found) || sorted.Own.TryGetValue(id, out found))) corrected = found;
        if (EntryRules.Against(entry, device, corrected, PlaceOf(entry)) is { } rule) return rule;
        var findings = _lookup.Check(entry, _lookup.PlaceOf(entry), isFromFile: false);
        if (findings.Any(f => f.Key == "ChoiceNotOffered")) sorted.HasRemovedLevel = true;
        // What it corrects may come after it: the log reads the same whichever was first.
        return findings.FirstOrDefault(f => f.IsRefused && !(f.Key == "EntryCorrectsUnknown" && entry.SupersedesId is not null));
    }

    // Without the pupil's name: whoever may not write about a pupil is not told who that is.
    private SheetPlace PlaceOf(Entry entry) => new(entry.TaskId, _lookup.TaskOf(entry.TaskId)?.Name, entry.SetNumber, entry.TrialNumber);
}
