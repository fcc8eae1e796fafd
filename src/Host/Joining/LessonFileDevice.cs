using Slantwise.Records.Floor;

namespace Slantwise.Host.Joining;

/// <summary>What a tablet becomes that takes a lesson from a file.</summary>
/// <param name="DeviceId">The text it signs its entries with.</param>
/// <param name="Name">What the teacher calls it.</param>
/// <param name="Kind">What it is there for.</param>
internal sealed record LessonFileDevice(string DeviceId, string Name, FloorDeviceKind Kind);
