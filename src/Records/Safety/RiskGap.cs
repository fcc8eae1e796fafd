namespace Slantwise.Records.Safety;

/// <summary>Something a risk page does not know yet, said rather than left out.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Sentence">In the reader's language.</param>
public sealed record RiskGap(RiskGapKind Kind, string Sentence);
