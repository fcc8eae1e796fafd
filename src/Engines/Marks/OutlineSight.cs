namespace Slantwise.Engines.Marks;

/// <summary>Where a field's printed outline was seen.</summary>
/// <param name="DxMm">To the right of where it was expected.</param>
/// <param name="DyMm">Below.</param>
/// <param name="RidgeFraction">How much darker it is than what lies on both sides of it, of paper's grey.</param>
/// <param name="LeadFraction">How much clearer this place is than the best one elsewhere.</param>
internal readonly record struct OutlineSight(double DxMm, double DyMm, double RidgeFraction, double LeadFraction);
