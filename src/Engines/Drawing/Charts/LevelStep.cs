namespace Slantwise.Engines.Drawing.Charts;

/// <summary>One set of a pupil's steps.</summary>
/// <param name="LevelNumber">The level chosen, from 1; none where none was written.</param>
/// <param name="Trials">Whether each try succeeded, in order; may be empty.</param>
/// <param name="LessonNumber">The lesson, from 1; never smaller than that of the set before.</param>
public sealed record LevelStep(int? LevelNumber, IReadOnlyList<bool> Trials, int LessonNumber);
