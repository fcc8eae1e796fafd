namespace Slantwise.Engines.Statistics.Holds;

/// <summary>What is known of one hold, and where it belongs.</summary>
/// <param name="Span">The lengths it may have had.</param>
/// <param name="Group">Its group, from 0: a task, a target, before and after.</param>
/// <param name="Pupil">Whose it was, any number; none where each hold is somebody else's.</param>
public readonly record struct GroupedHold(HoldSpan Span, int Group = 0, int? Pupil = null);
