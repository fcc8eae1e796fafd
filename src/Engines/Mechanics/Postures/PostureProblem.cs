namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>Something wrong in a posture's text. Its words are made outside.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="At">Where: the name as written, or a line for text that is not JSON.</param>
/// <param name="Allowed">What is allowed there; empty where the kind says it all.</param>
public sealed record PostureProblem(PostureProblemKind Kind, string At, string Allowed = "");
