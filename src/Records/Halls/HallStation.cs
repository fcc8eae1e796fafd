namespace Slantwise.Records.Halls;

/// <summary>A station of a lesson, numbered by its place in the list.</summary>
/// <param name="Name">What it is called, 1 to 60 characters.</param>
/// <param name="TaskId">The task done there; none where it is something else.</param>
public sealed record HallStation(string Name, Guid? TaskId);
