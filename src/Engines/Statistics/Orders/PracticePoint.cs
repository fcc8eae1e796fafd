namespace Slantwise.Engines.Statistics.Orders;

/// <summary>A time measured after some practice.</summary>
/// <param name="PracticeCount">Which try, lesson or set it was, above 0.</param>
/// <param name="TimeS">The time, above 0.</param>
public readonly record struct PracticePoint(double PracticeCount, double TimeS);
