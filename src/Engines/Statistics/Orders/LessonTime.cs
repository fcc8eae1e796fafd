namespace Slantwise.Engines.Statistics.Orders;

/// <summary>A pupil's time in a lesson: the best or the middle hold, one task and target throughout.</summary>
/// <param name="Pupil">Any number.</param>
/// <param name="Lesson">Which lesson of the unit.</param>
/// <param name="TimeS">The time, above 0.</param>
public readonly record struct LessonTime(int Pupil, int Lesson, double TimeS);
