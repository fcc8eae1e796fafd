namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A moment on a time line.</summary>
/// <param name="Label">What happens then.</param>
/// <param name="AtS">From the begin of the line, 0 or more.</param>
public sealed record BlockMark(string Label, double AtS);
