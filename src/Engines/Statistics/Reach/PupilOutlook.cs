namespace Slantwise.Engines.Statistics.Reach;

/// <summary>What is believed of one pupil at every level of a task.</summary>
/// <param name="AbilitySdLogits">How uncertain the pupil's own part is, 0 or more: it moves all levels together.</param>
/// <param name="Levels">One a level, in the task's order; none where policy or a restriction has removed it.</param>
public sealed record PupilOutlook(double AbilitySdLogits, IReadOnlyList<LevelOutlook?> Levels);
