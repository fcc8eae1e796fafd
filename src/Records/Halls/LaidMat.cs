namespace Slantwise.Records.Halls;

/// <summary>A mat in the hall.</summary>
/// <param name="XM">Its middle, metres from the left wall.</param>
/// <param name="YM">Its middle, metres from the front wall.</param>
/// <param name="IsTurned">Whether its long side goes from front to back.</param>
/// <param name="FallM">The radius of the falling circle of what is done on it, 0 to 10 metres.</param>
/// <param name="Station">The station it belongs to, from 1; none where there are no stations.</param>
public sealed record LaidMat(double XM, double YM, bool IsTurned, double FallM, int? Station);
