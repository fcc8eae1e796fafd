namespace Slantwise.Records.Floor.Contracts;

/// <summary>The code that joins devices now, for the teacher who has renewed it.</summary>
/// <param name="Code">The code.</param>
/// <param name="CodeUntil">It joins devices up to here, UTC.</param>
public sealed record CodeAnswer(string Code, DateTimeOffset CodeUntil);
