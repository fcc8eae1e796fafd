namespace Slantwise.Engines.Drawing.Charts;

/// <summary>What stands under a scale, in the caller's words; each may be empty.</summary>
/// <param name="Start">Under its beginning.</param>
/// <param name="Middle">Under its middle.</param>
/// <param name="End">Under its end.</param>
public sealed record ScaleText(string Start, string Middle, string End);
