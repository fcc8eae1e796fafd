using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Records.Floor;

/// <summary>A device in a lesson that it joined: all that it may do there.</summary>
public sealed class FloorMember
{
    /// <summary>Streams that a device may read at once: the old one may still look open when it comes back.</summary>
    public const int MostWatchCount = 2;

    private readonly FloorRoom _room;

    internal FloorMember(FloorRoom room, string deviceId) => (_room, DeviceId) = (room, deviceId);

    /// <summary>The device.</summary>
    public string DeviceId { get; }

    /// <summary>How the lesson and the device stand.</summary>
    public FloorState State => _room.StateOf(DeviceId);

    /// <summary>The school and the lesson.</summary>
    public (Guid SchoolId, Guid LessonId) Of => (_room.Lesson.SchoolId, _room.Lesson.LessonId);

    private FloorDevice Device => _room.FindDevice(DeviceId)!;

    /// <summary>What a device is told that has joined.</summary>
    /// <param name="token">What it shows from now on.</param>
    public JoinAnswer Joined(string token) => _room.Joined(DeviceId, token);

    /// <summary>Serves these pupils from now on.</summary>
    /// <exception cref="FloorRefusal">Too many or too few, somebody not in the class, a locked device, a lesson that has ended.</exception>
    public Task ClaimAsync(ClaimRequest request, CancellationToken cancel = default) => _room.ClaimAsync(DeviceId, request.PupilIds, cancel);

    /// <summary>Everything the device needs for the lesson, as it stands now.</summary>
    /// <param name="language">The language of the figures' words.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="FloorRefusal">The lesson is no longer here; a pupil's device that serves nobody now.</exception>
    public Task<LessonBundle> BundleAsync(CultureInfo language, CancellationToken cancel = default) => _room.BundleAsync(DeviceId, language, cancel);

    /// <summary>Takes entries, whatever the lesson's state: a batch that holds none is a sign of life.</summary>
    /// <param name="batch">In the device's order. Sent twice, in another order or cut otherwise it leads to the same.</param>
    /// <param name="language">The language of what is refused.</param>
    /// <param name="cancel">Stops waiting; what is on its way may still be taken.</param>
    /// <returns>Once what was taken is durable.</returns>
    /// <exception cref="FloorRefusal">More entries than a batch holds, a board with entries, a store that could not take them now.</exception>
    public async Task<BatchAnswer> TakeAsync(EntryBatch batch, CultureInfo language, CancellationToken cancel = default)
    {
        if (batch.Entries.Count > EntryBatch.MostEntryCount) throw new FloorRefusal(FloorProblemKind.BatchTooLarge);
        if (Device.Kind == FloorDeviceKind.Board && batch.Entries.Count > 0) throw new FloorRefusal(FloorProblemKind.NotAllowed);
        _room.See(DeviceId, Math.Max(0, batch.UnsentCount));
        var (taken, refused) = await _room.TakeAsync(DeviceId, batch.Entries, language, cancel);
        // What was refused stays with the device, but it is not waiting for this program.
        _room.See(DeviceId, Math.Max(0, batch.UnsentCount - taken.Count - refused.Count));
        return new BatchAnswer(taken, refused, State);
    }

    /// <summary>Listens to the lesson; dispose the watch to stop.</summary>
    /// <exception cref="FloorRefusal">The device listens twice already.</exception>
    public FloorWatch Watch() => _room.Watch(DeviceId, Device.Kind == FloorDeviceKind.Teacher, MostWatchCount);

    /// <summary>Says that the device is still there.</summary>
    public void See() => _room.See(DeviceId, null);

    /// <summary>Leaves, having delivered everything.</summary>
    public async Task<FloorState> LeaveAsync(CancellationToken cancel = default)
    {
        await _room.LeaveAsync(DeviceId, cancel);
        _room.See(DeviceId, 0);
        return State;
    }

    /// <summary>Locks, unlocks, names or frees a device, as the teacher.</summary>
    /// <exception cref="FloorRefusal">Not a teacher's device, a locked one, its own lock; no such device; a name that is too long.</exception>
    public Task<IReadOnlyList<DeviceSeen>> OrderDeviceAsync(string deviceId, DeviceOrder order, CancellationToken cancel = default)
    {
        RequireTeacher();
        if (deviceId == DeviceId && order.IsLocked == true) throw new FloorRefusal(FloorProblemKind.NotAllowed);
        return _room.OrderAsync(deviceId, order, cancel);
    }

    /// <summary>Stops, counts down, ends, as the teacher.</summary>
    /// <exception cref="FloorRefusal">Not a teacher's device, or a locked one; a countdown out of range.</exception>
    public async Task<FloorState> OrderLessonAsync(LessonOrder order, CancellationToken cancel = default)
    {
        RequireTeacher();
        await _room.OrderAsync(order, cancel);
        return State;
    }

    /// <summary>Whether the teacher's orders are taken from it. One that is locked is shut out of them: it may be in the wrong hands.</summary>
    /// <exception cref="FloorRefusal">They are not.</exception>
    public void RequireTeacher()
    {
        if (Device is not { Kind: FloorDeviceKind.Teacher, IsLocked: false }) throw new FloorRefusal(FloorProblemKind.NotAllowed);
    }
}
