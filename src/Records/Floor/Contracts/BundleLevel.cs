using Slantwise.Records.Tasks;

namespace Slantwise.Records.Floor.Contracts;

/// <summary>A level in a bundle.</summary>
/// <param name="LevelId">The level.</param>
/// <param name="Name">How it is done, in pupil words.</param>
/// <param name="DoseKind">What is measured.</param>
/// <param name="DoseAmount">How much makes a success, in the unit of the kind.</param>
/// <param name="FigureKey">The figure that shows it; none for a level without one.</param>
public sealed record BundleLevel(Guid LevelId, string Name, DoseKind DoseKind, decimal DoseAmount, string? FigureKey);
