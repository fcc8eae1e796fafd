namespace Slantwise.Records.Floor.Contracts;

/// <summary>A device asks to join a lesson.</summary>
/// <param name="DeviceId">The text it made for itself and keeps.</param>
/// <param name="Kind">What it wants to be. Teacher and board need a ticket for that.</param>
/// <param name="Code">What was typed from the wall; none with a ticket.</param>
/// <param name="Ticket">What a link or QR code carried; none with a typed code.</param>
public sealed record JoinRequest(string DeviceId, FloorDeviceKind Kind, string? Code = null, string? Ticket = null);
