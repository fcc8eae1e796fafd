namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>One thing judged twice.</summary>
/// <param name="First">The category the first judge gave, from 0: the pupil, where pupil and teacher are compared.</param>
/// <param name="Second">The category the second judge gave, from 0.</param>
public readonly record struct RatedPair(int First, int Second);
