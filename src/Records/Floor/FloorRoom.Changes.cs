using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Floor.Rooms;

namespace Slantwise.Records.Floor;

/// <content>What changes a lesson and its devices: written first, shown afterwards.</content>
public sealed partial class FloorRoom
{
    private const int NameLength = 40;
    private const int CountdownMostS = 3600;

    internal async Task<FloorLesson> ChangeLessonAsync(Func<FloorLesson, FloorLesson> change, CancellationToken cancel)
    {
        await _changing.WaitAsync(cancel);
        try
        {
            var changed = change(Lesson);
            if (changed == Lesson) return changed;
            await _store.SaveFloorLessonAsync(changed, cancel);
            lock (_lock) (_lesson, _lessonVersion) = (changed, _lessonVersion + 1);
            WakeAll();
            return changed;
        }
        finally
        {
            _changing.Release();
        }
    }

    internal Task<FloorLesson> OrderAsync(LessonOrder order, CancellationToken cancel)
    {
        var now = Clock.GetUtcNow();
        if (order.CountdownS is < 0 or > CountdownMostS) throw new FloorRefusal(FloorProblemKind.BodyUnreadable);
        return ChangeLessonAsync(
            lesson => lesson with
            {
                StoppedAt = order.IsStopped is { } stop ? (stop ? lesson.StoppedAt ?? now : null) : lesson.StoppedAt,
                CountdownUntil = order.CountdownS is { } seconds ? (seconds > 0 ? now.AddSeconds(seconds) : null) : lesson.CountdownUntil,
                ClosedAt = order.IsClosed is { } close ? (close ? lesson.ClosedAt ?? now : null) : lesson.ClosedAt,
            },
            cancel);
    }

    /// <summary>A device joins, or joins again because the answer did not reach it.</summary>
    /// <exception cref="FloorRefusal">A text that is no id, an id that joined as something else, a lesson that has ended or is full.</exception>
    internal Task<FloorDevice> JoinAsync(JoinRequest request, CancellationToken cancel)
    {
        if (request.DeviceId.Length is < 1 or > NameLength || TextCheck.HasControl(request.DeviceId) || string.IsNullOrWhiteSpace(request.DeviceId) || !Enum.IsDefined(request.Kind))
            throw new FloorRefusal(FloorProblemKind.BodyUnreadable);
        return ChangeDeviceAsync(
            request.DeviceId,
            (known, lesson, count) =>
            {
                if (known is not null && known.Kind != request.Kind) throw new FloorRefusal(FloorProblemKind.DeviceIdTaken);
                // The teacher may look into a lesson that has ended; pupils start nothing in it.
                if (lesson.ClosedAt is not null && request.Kind != FloorDeviceKind.Teacher) throw new FloorRefusal(FloorProblemKind.LessonClosed);
                if (known is not null) return known with { LeftAt = null };
                if (count >= MostDeviceCount) throw new FloorRefusal(FloorProblemKind.LessonFull);
                return new FloorDevice
                {
                    SchoolId = lesson.SchoolId,
                    LessonId = lesson.LessonId,
                    DeviceId = request.DeviceId,
                    Kind = request.Kind,
                    Name = (count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture),
                    JoinedAt = Clock.GetUtcNow(),
                };
            },
            cancel);
    }

    /// <summary>A device says whom it serves.</summary>
    /// <exception cref="FloorRefusal">Too many or too few, somebody not in the class, a locked device, a lesson that has ended.</exception>
    internal async Task ClaimAsync(string deviceId, IReadOnlyList<Guid> pupilIds, CancellationToken cancel)
    {
        var wanted = pupilIds.Distinct().ToList();
        var kind = FindDevice(deviceId)!.Kind;
        var isCountRight = kind switch
        {
            FloorDeviceKind.Pupil => wanted.Count == 1,
            FloorDeviceKind.Pair => wanted.Count is 1 or 2,
            _ => wanted.Count == 0,
        };
        if (!isCountRight || wanted.Count != pupilIds.Count) throw new FloorRefusal(FloorProblemKind.PupilCount);
        if (!AreInClass(wanted)) await RenewAsync(withFormer: false, cancel);
        if (!AreInClass(wanted)) throw new FloorRefusal(FloorProblemKind.PupilUnknown);
        await ChangeDeviceAsync(
            deviceId,
            (device, lesson, _) =>
            {
                if (lesson.ClosedAt is not null) throw new FloorRefusal(FloorProblemKind.LessonClosed);
                if (device!.IsLocked) throw new FloorRefusal(FloorProblemKind.NotAllowed);
                return device with { PupilIds = wanted, ServedPupilIds = [.. device.ServedPupilIds.Union(wanted)], LeftAt = null };
            },
            cancel);
    }

    internal Task LeaveAsync(string deviceId, CancellationToken cancel) => ChangeDeviceAsync(
        deviceId, (device, _, _) => device! with { PupilIds = [], LeftAt = device.LeftAt ?? Clock.GetUtcNow() }, cancel);

    internal async Task<IReadOnlyList<DeviceSeen>> OrderAsync(string deviceId, DeviceOrder order, CancellationToken cancel)
    {
        var name = order.Name?.Trim();
        if (name is not null && (name.Length is < 1 or > NameLength || TextCheck.HasControl(name))) throw new FloorRefusal(FloorProblemKind.NameLength);
        await ChangeDeviceAsync(
            deviceId,
            (device, _, _) => device is null
                ? throw new FloorRefusal(FloorProblemKind.DeviceUnknown)
                : device with { Name = name ?? device.Name, IsLocked = order.IsLocked ?? device.IsLocked, PupilIds = order.IsFreed ? [] : device.PupilIds },
            cancel);
        return Devices;
    }

    private async Task<FloorDevice> ChangeDeviceAsync(string deviceId, Func<FloorDevice?, FloorLesson, int, FloorDevice> change, CancellationToken cancel)
    {
        await _changing.WaitAsync(cancel);
        try
        {
            var (known, count) = (FindDevice(deviceId), DeviceCount);
            var changed = change(known, Lesson, count);
            if (changed == known) return changed;
            try
            {
                await _store.SaveFloorDeviceAsync(changed, cancel);
            }
            catch (ArgumentException)
            {
                // A pupil was erased meanwhile, and with that taken off the devices in the store.
                await ReloadDevicesAsync(cancel);
                changed = change(FindDevice(deviceId), Lesson, count);
                await _store.SaveFloorDeviceAsync(changed, cancel);
            }
            Show(changed);
            return changed;
        }
        finally
        {
            _changing.Release();
        }
    }

    private int DeviceCount
    {
        get { lock (_lock) return _devices.Count; }
    }

    private async Task ReloadDevicesAsync(CancellationToken cancel)
    {
        foreach (var device in await _store.ListFloorDevicesAsync(Lesson.SchoolId, Lesson.LessonId, cancel)) Show(device);
    }

    private void Show(FloorDevice device)
    {
        lock (_lock)
        {
            if (_devices.TryGetValue(device.DeviceId, out var shown)) shown.Kept = device;
            else _devices[device.DeviceId] = shown = new RoomDevice(device);
            shown.Version++;
            _devicesVersion++;
            foreach (var watch in _watches) watch.Wake();
        }
    }

    private bool AreInClass(IReadOnlyList<Guid> pupilIds)
    {
        var knowledge = Knowledge;
        return pupilIds.All(id => knowledge.Record.Pupils.Any(p => p.Id == id) && !knowledge.FormerPupilIds.Contains(id));
    }
}
