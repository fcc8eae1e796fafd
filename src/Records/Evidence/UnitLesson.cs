namespace Slantwise.Records.Evidence;

/// <summary>A lesson of a unit.</summary>
/// <param name="LessonId">The lesson.</param>
/// <param name="LessonNumber">From 1 for the earliest.</param>
/// <param name="Date">The day.</param>
/// <param name="Title">What it is called.</param>
public sealed record UnitLesson(Guid LessonId, int LessonNumber, DateOnly Date, string Title);
