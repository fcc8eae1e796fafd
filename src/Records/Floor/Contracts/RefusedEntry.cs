namespace Slantwise.Records.Floor.Contracts;

/// <summary>An entry that was not taken.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Reason">Why, a key as in a <see cref="Checks.Finding"/>.</param>
/// <param name="Text">Why, as a sentence in the device's language.</param>
public sealed record RefusedEntry(Guid Id, string Reason, string Text);
