namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A block on a time line.</summary>
/// <param name="Label">What happens, on one line; shortened where there is no room.</param>
/// <param name="TimeText">From when to when, in words of the caller.</param>
/// <param name="StartS">From the begin of the line, 0 or more.</param>
/// <param name="EndS">Above the start.</param>
/// <param name="Tone">The colour of its bar.</param>
/// <param name="HollowFraction">The share of it, 0 to 1, that is drawn as a frame only: waiting within practice.</param>
public sealed record BlockSpan(string Label, string TimeText, double StartS, double EndS, Tone Tone, double HollowFraction = 0);
