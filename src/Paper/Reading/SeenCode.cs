using Slantwise.Engines.Marks;

namespace Slantwise.Paper.Reading;

/// <summary>A code seen in a picture.</summary>
/// <param name="Text">What it says; none where it cannot be read.</param>
/// <param name="Sighting">Where it is.</param>
internal sealed record SeenCode(string? Text, CodeSighting Sighting);
