namespace Slantwise.Engines.Marks;

/// <summary>What was read in one field.</summary>
/// <param name="Key">The field's key.</param>
/// <param name="Verdict">What it shows.</param>
/// <param name="MarkedFraction">How likely a mark is meant, 0 to 1, as calibrated on pictures with known marks.</param>
public sealed record FieldReading(string Key, MarkVerdict Verdict, double MarkedFraction);
