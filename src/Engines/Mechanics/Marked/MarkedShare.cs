namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>What one contact carries, as far as one view decides it.</summary>
/// <param name="Part">The part of the body.</param>
/// <param name="Side">Its side.</param>
/// <param name="ShareFraction">Share of the body's weight by the lever rule; NaN for three contacts and more, which one view does not decide.</param>
/// <param name="ShareSdFraction">How far it may be off by clicking, guessed points and tilt; NaN with it.</param>
/// <param name="LeastFraction">The least that statics allows in this view.</param>
/// <param name="MostFraction">The most that it allows.</param>
public sealed record MarkedShare(
    ContactPart Part, Side Side, double ShareFraction, double ShareSdFraction, double LeastFraction, double MostFraction);
