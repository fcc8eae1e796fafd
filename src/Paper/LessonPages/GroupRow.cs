namespace Slantwise.Paper.LessonPages;

/// <summary>Groups beside each other on the list.</summary>
/// <param name="Groups">For each its number and the lines of its names.</param>
/// <param name="Columns">How many there is room for.</param>
/// <param name="SizePt">The type of the names.</param>
/// <param name="HeightMm">As high as the highest of them.</param>
internal sealed record GroupRow(IReadOnlyList<(int Number, IReadOnlyList<string> Lines)> Groups, int Columns, double SizePt, double HeightMm);
