namespace Slantwise.Engines.Statistics.Holds;

/// <summary>A stretch of time in which holds ended; where within it, nobody saw.</summary>
/// <param name="FromS">Where the stretch begins.</param>
/// <param name="ToS">Where it ends; the same for an exact time; none for holds that go on after the last time seen.</param>
/// <param name="HeldFraction">The share still held after it, 0 to 1.</param>
/// <param name="ErrorFraction">Standard error of that share, leaving out one pupil at a time; none for a single one, and where the share is 0 or 1.</param>
/// <param name="LowFraction">Lower end of the range, 0 to 1; none together with the error.</param>
/// <param name="HighFraction">Upper end of the range.</param>
public readonly record struct SpanStep(
    double FromS, double? ToS, double HeldFraction, double? ErrorFraction, double? LowFraction, double? HighFraction);
