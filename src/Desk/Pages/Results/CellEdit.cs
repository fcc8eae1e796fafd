namespace Slantwise.Desk.Pages.Results;

/// <summary>A text typed into a cell, as the page sends it.</summary>
/// <param name="Key">The cell's key.</param>
/// <param name="Text">What stands in it now.</param>
public sealed record CellEdit(string Key, string Text);
