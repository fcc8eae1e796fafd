namespace Slantwise.Engines.Statistics.Responses;

/// <summary>One coefficient of the model.</summary>
/// <param name="Kind">What it belongs to.</param>
/// <param name="Index">Which of its kind: a <see cref="DoseMeasure"/> for slopes, else a place.</param>
/// <param name="Value">Its value.</param>
public readonly record struct CoefficientEstimate(CoefficientKind Kind, int Index, Estimate Value);
