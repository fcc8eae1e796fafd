namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A level in a reach chart: a line across all rows.</summary>
/// <param name="Label">What stands at its head, short: its number on the sheet.</param>
/// <param name="AtLogits">Where it lies from easier to harder; any unit, the same throughout.</param>
public sealed record ReachLine(string Label, double AtLogits);
