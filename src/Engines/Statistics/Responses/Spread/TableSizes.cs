namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>How many pupils there are, and how many lessons in which their abilities may have wandered.</summary>
internal readonly record struct TableSizes(int Pupils, int States);
