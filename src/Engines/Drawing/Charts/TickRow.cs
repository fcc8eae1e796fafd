namespace Slantwise.Engines.Drawing.Charts;

/// <summary>One cue of a tick chart.</summary>
/// <param name="Label">The cue, on one line; shortened where there is no room.</param>
/// <param name="UntickedCount">Sets in which it was left open, 0 to the sets checked.</param>
/// <param name="CheckedCount">Sets in which cues were checked, 0 or more.</param>
/// <param name="CountText">What stands at the right: the two counts, in words of the caller.</param>
public sealed record TickRow(string Label, int UntickedCount, int CheckedCount, string CountText);
