namespace Slantwise.Records.Tasks.Designs;

/// <summary>What a factor and its values are called.</summary>
/// <param name="Name">The factor's name.</param>
/// <param name="Values">What each word value means, by its key; empty for numbers.</param>
public sealed record FactorWords(string Name, IReadOnlyDictionary<string, string> Values);
