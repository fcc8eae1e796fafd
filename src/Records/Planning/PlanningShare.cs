using Slantwise.Engines.Planning.Blocks;

namespace Slantwise.Records.Planning;

/// <summary>What goes to a category of a lesson, in words.</summary>
/// <param name="Category">The category.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Time">Minutes and share.</param>
/// <param name="Orientation">The published value with its source, labelled as orientation; empty where there is none.</param>
public sealed record PlanningShare(TimeCategory Category, string Name, string Time, string Orientation);
