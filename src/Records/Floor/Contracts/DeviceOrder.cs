namespace Slantwise.Records.Floor.Contracts;

/// <summary>What the teacher does with a device; what is none stays.</summary>
/// <param name="Name">A new name, 1 to 40 characters.</param>
/// <param name="IsLocked">Lock it or unlock it.</param>
/// <param name="IsFreed">True to take its pupils off it, so that others can be picked.</param>
public sealed record DeviceOrder(string? Name = null, bool? IsLocked = null, bool IsFreed = false);
