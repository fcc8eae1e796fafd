namespace Slantwise.Engines.Marks;

/// <summary>A place to mark: any stroke in it counts, a tick, a cross or a filling.</summary>
/// <param name="Key">What a mark here would mean, for those who made the form; unique on it.</param>
/// <param name="Group">Fields of one group belong together: of those that exclude each other a single one is usually marked. Empty for a field on its own.</param>
/// <param name="XMm">Its left edge, the middle of its outline.</param>
/// <param name="YMm">Its top edge, the middle of its outline.</param>
/// <param name="WidthMm">Its width.</param>
/// <param name="HeightMm">Its height.</param>
/// <param name="IsRound">Whether its outline is an ellipse; otherwise a box.</param>
public sealed record MarkField(string Key, string Group, double XMm, double YMm, double WidthMm, double HeightMm, bool IsRound);
