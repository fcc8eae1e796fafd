namespace Slantwise.Records.Tasks;

/// <summary>How much of a task makes a success: a hold of 5 s, 10 jumps, a throw from 4 m.</summary>
/// <param name="Kind">What is measured, and with it the unit.</param>
/// <param name="Amount">More than 0, in the unit the kind names: seconds, a count, or metres.</param>
public sealed record Dose(DoseKind Kind, decimal Amount);
