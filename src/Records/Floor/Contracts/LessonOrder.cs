namespace Slantwise.Records.Floor.Contracts;

/// <summary>What the teacher does with the lesson; what is none stays.</summary>
/// <param name="IsStopped">Show stop on every screen, or let them go on.</param>
/// <param name="CountdownS">Start a countdown of so many seconds, 1 to 3600; 0 to take it away.</param>
/// <param name="IsClosed">End the lesson for devices, or open it again.</param>
public sealed record LessonOrder(bool? IsStopped = null, int? CountdownS = null, bool? IsClosed = null);
