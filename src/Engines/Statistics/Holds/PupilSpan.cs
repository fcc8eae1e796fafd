namespace Slantwise.Engines.Statistics.Holds;

/// <summary>What is known of the length of one hold, and whose it was.</summary>
/// <param name="Span">The lengths it may have had.</param>
/// <param name="Pupil">Any number; none where each hold is somebody else's.</param>
public readonly record struct PupilSpan(HoldSpan Span, int? Pupil = null);
