namespace Slantwise.Engines.Marks;

/// <summary>A place for words or numbers by hand.</summary>
/// <param name="Key">What is written here, for those who made the form; unique on it.</param>
/// <param name="XMm">Its left edge.</param>
/// <param name="YMm">Its top edge.</param>
/// <param name="WidthMm">Its width.</param>
/// <param name="HeightMm">Its height.</param>
public sealed record WrittenField(string Key, double XMm, double YMm, double WidthMm, double HeightMm);
