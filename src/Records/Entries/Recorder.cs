namespace Slantwise.Records.Entries;

/// <summary>Turns what should hold now into the entries that make it so: nothing where it holds already, a correction where something else does.</summary>
/// <remarks>Used by every way in (desk, file, paper), so that typing a sheet and adding it from a file give the same log.</remarks>
public sealed class Recorder
{
    private readonly Guid _schoolId;
    private readonly Guid _lessonId;
    private readonly EntrySource _source;
    private readonly string _deviceId;
    private readonly TimeProvider _clock;
    private readonly Dictionary<EntrySlot, Entry> _current;
    private long _sequence;

    /// <summary>A recorder for one lesson on one device.</summary>
    /// <param name="schoolId">The owning school.</param>
    /// <param name="lessonId">The lesson written about.</param>
    /// <param name="source">The way in.</param>
    /// <param name="deviceId">The device's own short text.</param>
    /// <param name="clock">Dates the entries and their ids.</param>
    /// <param name="log">Every entry of the lesson so far, superseded ones included.</param>
    public Recorder(
        Guid schoolId, Guid lessonId, EntrySource source, string deviceId, TimeProvider clock, IReadOnlyList<Entry> log)
    {
        (_schoolId, _lessonId, _source, _deviceId, _clock) = (schoolId, lessonId, source, deviceId, clock);
        _sequence = log.Where(e => e.DeviceId == deviceId).Select(e => e.DeviceSequence).DefaultIfEmpty(0).Max();
        _current = EntryLog.Current(log)
            .Where(e => !EntryLog.IsEvent(e.Fact))
            .ToDictionary(EntrySlot.Of);
    }

    /// <summary>The entry that makes a fact hold.</summary>
    /// <param name="pupilId">The pupil; none for a fact about the lesson.</param>
    /// <param name="taskId">The task; none where no task is meant.</param>
    /// <param name="setNumber">The set, from 1; none where no set is meant.</param>
    /// <param name="trialNumber">The trial, from 1; none where no trial is meant.</param>
    /// <param name="fact">What should hold. A <see cref="Withdrawal"/> is not a fact: use <see cref="TakeBack"/>.</param>
    /// <returns>A new entry, superseding what held before; none if the same fact holds already.</returns>
    /// <exception cref="ArgumentException">The fact is a withdrawal.</exception>
    public Entry? Put(Guid? pupilId, Guid? taskId, int? setNumber, int? trialNumber, EntryFact fact)
    {
        if (fact is Withdrawal) throw new ArgumentException("A withdrawal is made by TakeBack, which knows what it withdraws.", nameof(fact));
        var entry = New(pupilId, taskId, setNumber, trialNumber, fact);
        if (EntryLog.IsEvent(fact)) return Numbered(entry);

        var slot = EntrySlot.Of(entry);
        if (_current.TryGetValue(slot, out var held))
        {
            if (held.Fact == fact) return null;
            entry = entry with { SupersedesId = held.Id };
        }
        entry = Numbered(entry);
        _current[slot] = entry;
        return entry;
    }

    /// <summary>The entry that takes back whatever a slot holds.</summary>
    /// <param name="slot">The question whose answer is withdrawn.</param>
    /// <returns>A withdrawal; none if the slot is empty.</returns>
    public Entry? TakeBack(EntrySlot slot)
    {
        if (!_current.Remove(slot, out var held)) return null;
        return Numbered(New(held.PupilId, held.TaskId, held.SetNumber, held.TrialNumber, new Withdrawal()) with { SupersedesId = held.Id });
    }

    /// <summary>What a slot holds now; none if it is empty.</summary>
    /// <param name="slot">The question asked.</param>
    public EntryFact? Holds(EntrySlot slot) => _current.GetValueOrDefault(slot)?.Fact;

    private Entry New(Guid? pupilId, Guid? taskId, int? setNumber, int? trialNumber, EntryFact fact) => new()
    {
        SchoolId = _schoolId,
        Id = EntryId.New(_clock),
        LessonId = _lessonId,
        PupilId = pupilId,
        TaskId = taskId,
        SetNumber = setNumber,
        TrialNumber = trialNumber,
        Fact = fact,
        Source = _source,
        DeviceId = _deviceId,
        DeviceSequence = 0,
        MadeAt = _clock.GetUtcNow(),
    };

    private Entry Numbered(Entry entry) => entry with { DeviceSequence = ++_sequence };
}
