namespace Slantwise.Records.Floor;

/// <summary>The floor does not do what it was asked; nothing has changed.</summary>
#pragma warning disable RCS1194 // Without a kind it would say nothing.
public sealed class FloorRefusal : Exception
#pragma warning restore RCS1194
{
    /// <summary>A refusal.</summary>
    /// <param name="kind">Why.</param>
    /// <param name="cause">The failure behind it; none where it is a rule.</param>
    public FloorRefusal(FloorProblemKind kind, Exception? cause = null)
        : base($"The floor refused: {kind}.", cause) => Kind = kind;

    /// <summary>Why.</summary>
    public FloorProblemKind Kind { get; }
}
