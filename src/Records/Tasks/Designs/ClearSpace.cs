namespace Slantwise.Records.Tasks.Designs;

/// <summary>The floor that has to stay free around a performer, or around the pair.</summary>
/// <param name="SpaceM">In metres to each side, 0.5 to 10.</param>
/// <param name="Source"><c>commonPractice</c> where nobody published it, or a key of docs/references.md.</param>
public sealed record ClearSpace(decimal SpaceM, string Source)
{
    /// <summary>What a file writes where the number is common practice and has no source.</summary>
    public const string CommonPractice = "commonPractice";
}
