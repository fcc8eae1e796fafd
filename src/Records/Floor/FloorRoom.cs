using Slantwise.Records.Entries;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Floor.Rooms;

namespace Slantwise.Records.Floor;

/// <summary>One lesson that was opened for devices, in memory over the store.</summary>
public sealed partial class FloorRoom
{
    /// <summary>Devices that may join one lesson: a class with one each, and as many again that lost their memory.</summary>
    public const int MostDeviceCount = 120;

    private readonly IStore _store;
    private readonly GroupCommit _commit;
    private readonly SideWork _side;
    private readonly string _appVersion;
    private readonly SemaphoreSlim _changing = new(1, 1);
    private readonly Lock _lock = new();
    private readonly Dictionary<string, RoomDevice> _devices;
    private readonly List<FloorWatch> _watches = [];
    private FloorLesson _lesson;
    private LessonKnowledge _knowledge;
    private long _lessonVersion, _devicesVersion, _seenVersion, _usedAtTicks;

    private FloorRoom(
        IStore store, TimeProvider clock, GroupCommit commit, SideWork side, string appVersion,
        FloorLesson lesson, IEnumerable<FloorDevice> devices, LessonKnowledge knowledge)
    {
        (_store, Clock, _commit, _side, _appVersion, _lesson, _knowledge) = (store, clock, commit, side, appVersion, lesson, knowledge);
        _devices = devices.ToDictionary(d => d.DeviceId, d => new RoomDevice(d));
        _live = new LiveQuestions(store);
        Use();
    }

    /// <summary>Code, countdown, stop, end.</summary>
    public FloorLesson Lesson
    {
        get { lock (_lock) return _lesson; }
    }

    /// <summary>The devices in the order they joined.</summary>
    public IReadOnlyList<DeviceSeen> Devices
    {
        get { lock (_lock) return DevicesLocked(); }
    }

    internal TimeProvider Clock { get; }

    internal static async Task<FloorRoom?> LoadAsync(
        IStore store, TimeProvider clock, GroupCommit commit, SideWork side, string appVersion, Guid schoolId, Guid lessonId)
    {
        if (await store.FindFloorLessonAsync(schoolId, lessonId) is not { } lesson) return null;
        if (await LessonKnowledge.LoadAsync(store, schoolId, lessonId, withFormer: false, clock, CancellationToken.None) is not { } known) return null;
        return new(store, clock, commit, side, appVersion, lesson, await store.ListFloorDevicesAsync(schoolId, lessonId), known.Knowledge);
    }

    /// <summary>Whether nobody listens and nobody has asked for a while.</summary>
    internal bool IsIdle(TimeSpan since)
    {
        lock (_lock) return _watches.Count == 0 && Clock.GetUtcNow().UtcTicks - Interlocked.Read(ref _usedAtTicks) > since.Ticks;
    }

    internal void Use() => Interlocked.Exchange(ref _usedAtTicks, Clock.GetUtcNow().UtcTicks);

    /// <summary>A listener; dispose it to stop.</summary>
    /// <param name="deviceId">The device that listens; none for the desk.</param>
    /// <param name="isTeachers">Whether it hears about entries, devices and questions.</param>
    /// <param name="most">Listeners of this device, at most; none for the desk.</param>
    /// <exception cref="FloorRefusal">The device listens that often already.</exception>
    internal FloorWatch Watch(string? deviceId, bool isTeachers, int? most = null)
    {
        var watch = new FloorWatch(this, deviceId) { IsTeachers = isTeachers };
        lock (_lock)
        {
            if (_watches.Count(w => w.DeviceId == deviceId) >= most) throw new FloorRefusal(FloorProblemKind.TooOften);
            _watches.Add(watch);
            if (isTeachers) StartFollowingLocked();
        }
        return watch;
    }

    internal void Leave(FloorWatch watch)
    {
        lock (_lock)
        {
            _watches.Remove(watch);
            if (!_watches.Any(w => w.IsTeachers)) StopFollowingLocked();
        }
        Use();
    }

    /// <summary>The device; none if it never joined.</summary>
    internal FloorDevice? FindDevice(string deviceId)
    {
        lock (_lock) return _devices.GetValueOrDefault(deviceId)?.Kept;
    }

    internal FloorState StateOf(string deviceId)
    {
        lock (_lock) return StateLocked(_devices[deviceId].Kept);
    }

    /// <summary>That a device has spoken, and how much it has still to deliver.</summary>
    internal void See(string deviceId, int? unsentCount)
    {
        lock (_lock)
        {
            var device = _devices[deviceId];
            device.SeenAt = Clock.GetUtcNow();
            device.UnsentCount = unsentCount ?? device.UnsentCount;
            _seenVersion++;
            foreach (var watch in _watches.Where(w => w.IsTeachers)) watch.Wake();
        }
    }

    internal RoomView Look(string? deviceId, long? toldLog, int toldEntryCount, int most)
    {
        lock (_lock)
        {
            var device = deviceId is null ? null : _devices[deviceId];
            // After a pupil was erased the log is another one: it is told from its start, and what was told before is known by its id.
            var from = toldLog is null ? _log.Count : toldLog == _logVersion ? toldEntryCount : 0;
            var entries = _log.GetRange(Math.Min(from, _log.Count), Math.Min(most, Math.Max(0, _log.Count - from)));
            var until = Math.Min(from + entries.Count, _log.Count);
            return new(
                device is null ? null : StateLocked(device.Kept), (_lessonVersion, device?.Version ?? 0),
                toldLog is null ? [] : DevicesLocked(), (_devicesVersion, _seenVersion), _questions, _questionsVersion,
                entries, _logVersion, until, toldLog is not null && until < _log.Count);
        }
    }

    private FloorState StateLocked(FloorDevice device)
    {
        var isTold = device is { Kind: FloorDeviceKind.Teacher or FloorDeviceKind.Board, IsLocked: false } && _lesson.ClosedAt is null;
        return new(
            Clock.GetUtcNow(), device.Name, device.PupilIds, device.IsLocked, _lesson.StoppedAt, _lesson.CountdownUntil, _lesson.ClosedAt, _appVersion,
            isTold ? _lesson.Code : null, isTold ? _lesson.CodeUntil : null);
    }

    private IReadOnlyList<DeviceSeen> DevicesLocked() =>
        [.. _devices.Values.OrderBy(d => d.Kept.JoinedAt).ThenBy(d => d.Kept.DeviceId, StringComparer.Ordinal).Select(d => d.Seen)];

    private void WakeAll()
    {
        lock (_lock)
        {
            foreach (var watch in _watches) watch.Wake();
        }
    }
}
