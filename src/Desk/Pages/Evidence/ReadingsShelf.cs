using Slantwise.Records;
using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>
/// What pages last read of each class, kept for the next page. Each time the store is asked what has changed since, whoever changed it, and only that is
/// read and worked out again; pages that ask at once wait for one answer.
/// </summary>
/// <remarks>It holds children's data, in memory alone: a class is let go when nobody has asked for a while, when others need the room, and when a pupil is erased.</remarks>
/// <param name="store">Where the records are.</param>
/// <param name="clock">Tells how long ago a class was asked for.</param>
public sealed class ReadingsShelf(IStore store, TimeProvider clock) : IDisposable
{
    /// <summary>How long a class is kept that nobody asks for.</summary>
    public static readonly TimeSpan KeptFor = TimeSpan.FromMinutes(15);

    private readonly Lock _places = new();
    private readonly Dictionary<(Guid SchoolId, Guid ClassId), Place> _placeOf = [];
    private ITimer? _sweeps;

    /// <summary>As many entries as are kept at most, over all classes; one class alone may have more.</summary>
    public int MostEntryCount { get; init; } = 200_000;

    /// <summary>How many classes are kept.</summary>
    public int ClassCount
    {
        get
        {
            lock (_places) return _placeOf.Values.Count(p => p.Readings is not null);
        }
    }

    /// <summary>A class as it stands in the store now.</summary>
    /// <param name="schoolId">The school.</param>
    /// <param name="classId">The class.</param>
    /// <returns>The same object as before where nothing has changed. Empty where the school has no such class.</returns>
    public async Task<UnitReadings> ReadAsync(Guid schoolId, Guid classId)
    {
        var place = PlaceOf((schoolId, classId));
        await place.Turn.WaitAsync();
        try
        {
            var (known, before) = (place.Readings, place.Loaded);
            var loaded = await ClassRecords.LoadAsync(store, schoolId, classId, before);
            var readings = known is not null && loaded == before
                ? known
                : new UnitReadings(classId, [.. loaded.Lessons.Where(r => r.Lesson.SheetVersion is not null)], known);
            Keep((schoolId, classId), place, loaded, readings);
            return readings;
        }
        finally
        {
            place.Turn.Release();
        }
    }

    /// <summary>Lets go of everything of a school, as after a pupil was erased.</summary>
    /// <param name="schoolId">The school.</param>
    public void Forget(Guid schoolId)
    {
        lock (_places)
            foreach (var key in _placeOf.Keys.Where(k => k.SchoolId == schoolId).ToList()) _placeOf.Remove(key);
    }

    /// <inheritdoc/>
    public void Dispose() => _sweeps?.Dispose();

    private Place PlaceOf((Guid, Guid) key)
    {
        lock (_places)
        {
            _sweeps ??= clock.CreateTimer(_ => LetGo(), null, KeptFor / 5, KeptFor / 5);
            return _placeOf.TryGetValue(key, out var place) ? place : _placeOf[key] = new();
        }
    }

    // A class forgotten while it was being read stays forgotten.
    private void Keep((Guid, Guid) key, Place place, ClassRecords loaded, UnitReadings readings)
    {
        lock (_places)
        {
            if (!_placeOf.TryGetValue(key, out var kept) || kept != place) return;
            (place.Loaded, place.Readings, place.AskedAt) = (loaded, readings, clock.GetTimestamp());
        }
        LetGo();
    }

    private void LetGo()
    {
        lock (_places)
        {
            var count = 0;
            foreach (var (key, place) in _placeOf.Where(p => p.Value.Readings is not null).OrderByDescending(p => p.Value.AskedAt).ToList())
            {
                var isFirst = count == 0;
                count += 1 + place.Readings!.Records.Sum(r => r.Entries.Count);
                if (clock.GetElapsedTime(place.AskedAt) >= KeptFor || (count > MostEntryCount && !isFirst)) _placeOf.Remove(key);
            }
        }
    }

    private sealed class Place
    {
        public SemaphoreSlim Turn { get; } = new(1, 1);

        public ClassRecords? Loaded { get; set; }

        public UnitReadings? Readings { get; set; }

        public long AskedAt { get; set; }
    }
}
