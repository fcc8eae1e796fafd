namespace Slantwise.Records.Lessons;

/// <summary>A planned block of a lesson.</summary>
/// <param name="Kind">What most pupils do in it.</param>
/// <param name="DurationMin">How long, in whole minutes, 1 to 180.</param>
/// <param name="Note">What happens, in the teacher's words; may be empty.</param>
public sealed record LessonPhase(PhaseKind Kind, int DurationMin, string Note);
