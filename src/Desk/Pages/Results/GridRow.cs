namespace Slantwise.Desk.Pages.Results;

/// <summary>One set of one task: a line of the grid.</summary>
/// <param name="TaskNumber">The task, from 1.</param>
/// <param name="SetNumber">The set, from 1.</param>
/// <param name="Cells">In the order they are filled in, level first; never empty.</param>
public sealed record GridRow(int TaskNumber, int SetNumber, IReadOnlyList<GridCell> Cells);
