namespace Slantwise.Records.Floor.Contracts;

/// <summary>How the lesson and one device stand: in every answer, and sent when it changes.</summary>
/// <param name="ServerNow">The server's clock, UTC, so that a device can count down by it.</param>
/// <param name="DeviceName">What the teacher calls the device.</param>
/// <param name="PupilIds">Whom it serves; empty for station, teacher and board, and for a device the teacher has freed.</param>
/// <param name="IsLocked">Whether its screen rests.</param>
/// <param name="StoppedAt">Since when every screen says stop; none where nobody called it.</param>
/// <param name="CountdownUntil">When the countdown reaches 0; none where none runs.</param>
/// <param name="ClosedAt">When the lesson ended; none while it goes on.</param>
/// <param name="AppVersion">The version of the floor's pages the server has.</param>
/// <param name="JoinCode">What pupils type to join, for the teacher's devices and the board; none for others and once the lesson has ended.</param>
/// <param name="JoinCodeUntil">The code joins devices up to here; none where no code is told.</param>
public sealed record FloorState(
    DateTimeOffset ServerNow, string DeviceName, IReadOnlyList<Guid> PupilIds, bool IsLocked,
    DateTimeOffset? StoppedAt, DateTimeOffset? CountdownUntil, DateTimeOffset? ClosedAt, string AppVersion,
    string? JoinCode = null, DateTimeOffset? JoinCodeUntil = null);
