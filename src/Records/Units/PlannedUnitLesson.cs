namespace Slantwise.Records.Units;

/// <summary>One lesson of a unit, planned or already in the calendar.</summary>
/// <param name="Title">What it is called, 0 to 80 characters.</param>
/// <param name="LessonId">The lesson in the calendar; none until there is one.</param>
/// <param name="Tasks">What is worked on, at most 6.</param>
/// <param name="Aims">What pupils should learn in it, at most 5 of 160 characters.</param>
public sealed record PlannedUnitLesson(string Title, Guid? LessonId, IReadOnlyList<UnitTask> Tasks, IReadOnlyList<string> Aims);
