namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>What a posture's text holds, or what is wrong with it.</summary>
/// <param name="Posture">The posture; none where the text could not be taken.</param>
/// <param name="Problems">What is wrong, in order; empty where the posture could be read.</param>
public sealed record PostureReading(Posture? Posture, IReadOnlyList<PostureProblem> Problems);
