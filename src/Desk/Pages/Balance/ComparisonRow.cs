namespace Slantwise.Desk.Pages.Balance;

/// <summary>One line of a comparison.</summary>
/// <param name="What">What is compared.</param>
/// <param name="A">Of the first posture, as shown.</param>
/// <param name="B">Of the second.</param>
/// <param name="Difference">In words; empty where nothing can be said.</param>
/// <param name="IsDifferent">Whether it is worth a sentence of its own.</param>
public sealed record ComparisonRow(string What, string A, string B, string Difference, bool IsDifferent);
