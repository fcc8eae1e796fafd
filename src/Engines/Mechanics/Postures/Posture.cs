namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>A named way to hold the body, or two bodies together: angles, and what touches.</summary>
/// <param name="Key">A short name for files and lists, lower-case words joined by hyphens.</param>
/// <param name="Group">The family it belongs to.</param>
/// <param name="Pose">The angles.</param>
/// <param name="Contacts">What touches the floor, 1 or more.</param>
public sealed record Posture(string Key, PostureGroup Group, Pose Pose, IReadOnlyList<Contact> Contacts)
{
    /// <summary>What leans against a wall; empty for a posture without one.</summary>
    public IReadOnlyList<Contact> Wall { get; init; } = [];

    /// <summary>The second body; none for a posture of one.</summary>
    public Partner? Partner { get; init; }

    /// <summary>Whether some of the weight is on a head.</summary>
    public bool HasHeadWeight => Contacts.Concat(Partner?.Contacts ?? []).Any(c => ContactPatch.IsHead(c.Part));

    /// <summary>The posture on the floor.</summary>
    public SettledPosture Settle() => SettledPosture.Of(this);

    /// <summary>Whether the hips of a body are higher than its head.</summary>
    /// <param name="body">On the floor, or carried.</param>
    public static bool IsInverted(SettledBody body) =>
        body.Skeleton.Frame(SegmentKind.LowerTrunk, Side.Middle).Origin.ZH
        > body.Skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH / 2)).ZH;
}
