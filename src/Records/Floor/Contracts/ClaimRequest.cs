namespace Slantwise.Records.Floor.Contracts;

/// <summary>A device says whom it serves from now on; what it then takes is its bundle.</summary>
/// <param name="PupilIds">One for a pupil's device, one or two for a pair's; none for a station, which serves the class.</param>
public sealed record ClaimRequest(IReadOnlyList<Guid> PupilIds);
