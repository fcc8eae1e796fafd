using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>A device in a room: what is kept, and what is only remembered.</summary>
internal sealed class RoomDevice(FloorDevice kept)
{
    public FloorDevice Kept { get; set; } = kept;

    public DateTimeOffset? SeenAt { get; set; }

    public int UnsentCount { get; set; }

    /// <summary>Counts what is worth telling the device.</summary>
    public long Version { get; set; }

    public DeviceSeen Seen => new(Kept.DeviceId, Kept.Name, Kept.Kind, Kept.PupilIds, Kept.IsLocked, SeenAt, UnsentCount, Kept.LeftAt is not null);
}
