namespace Slantwise.Records.Floor.Contracts;

/// <summary>A device as the teacher sees it.</summary>
/// <param name="DeviceId">The device.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Kind">What it is there for.</param>
/// <param name="PupilIds">Whom it serves.</param>
/// <param name="IsLocked">Whether its screen rests.</param>
/// <param name="SeenAt">When it last spoke, UTC; none since the server started.</param>
/// <param name="UnsentCount">How many entries it said were waiting, then.</param>
/// <param name="HasLeft">Whether it has left, having delivered everything.</param>
public sealed record DeviceSeen(
    string DeviceId, string Name, FloorDeviceKind Kind, IReadOnlyList<Guid> PupilIds, bool IsLocked, DateTimeOffset? SeenAt, int UnsentCount, bool HasLeft);
