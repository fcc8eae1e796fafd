namespace Slantwise.Engines.Drawing.Charts;

/// <summary>One step of a curve that falls in time.</summary>
/// <param name="TimeS">When it falls, more than the step before it, 0 or more.</param>
/// <param name="ShareFraction">The share left after it, 0 to 1, not above the step before it.</param>
/// <param name="LowFraction">The lower end of its range; none where there is none.</param>
/// <param name="HighFraction">The upper end; none together with the lower.</param>
/// <param name="IsThin">It rests on few: drawn dashed up to it.</param>
public readonly record struct HeldStep(double TimeS, double ShareFraction, double? LowFraction, double? HighFraction, bool IsThin);
