namespace Slantwise.Records.Halls;

/// <summary>Something fixed in a hall: a pillar, a stage, a stack of benches.</summary>
/// <param name="Name">What it is, 0 to 40 characters.</param>
/// <param name="LeftM">Its side nearest to the left wall, metres from that wall.</param>
/// <param name="FrontM">Its side nearest to the front wall, metres from that wall.</param>
/// <param name="WidthM">From left to right, above 0.</param>
/// <param name="DepthM">From front to back, above 0.</param>
/// <param name="IsHigh">Whether nobody can see over it.</param>
public sealed record HallThing(string Name, double LeftM, double FrontM, double WidthM, double DepthM, bool IsHigh);
