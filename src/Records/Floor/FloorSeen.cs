using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Records.Floor;

/// <summary>An open lesson as the desk shows it.</summary>
/// <param name="Lesson">Code, countdown, stop, end.</param>
/// <param name="Devices">The devices in the order they joined.</param>
public sealed record FloorSeen(FloorLesson Lesson, IReadOnlyList<DeviceSeen> Devices);
