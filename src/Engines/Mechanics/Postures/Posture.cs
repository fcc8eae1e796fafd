namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>A named way to hold the body: angles, and what touches the floor.</summary>
/// <param name="Key">A short name for files and lists, lower-case words joined by hyphens.</param>
/// <param name="Group">The family it belongs to.</param>
/// <param name="Pose">The angles.</param>
/// <param name="Contacts">What touches the floor, 1 or more.</param>
public sealed record Posture(string Key, PostureGroup Group, Pose Pose, IReadOnlyList<Contact> Contacts)
{
    /// <summary>Whether some of the weight is on the head.</summary>
    public bool HasHeadWeight => Contacts.Any(c => ContactPatch.IsHead(c.Part));

    /// <summary>The posture on the floor.</summary>
    public SettledBody Settle() => SettledBody.Of(Pose, Contacts);

    /// <summary>Whether the hips are higher than the head, once settled.</summary>
    /// <param name="body">The settled posture.</param>
    public static bool IsInverted(SettledBody body) =>
        body.Skeleton.Frame(SegmentKind.LowerTrunk, Side.Middle).Origin.ZH
        > body.Skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH / 2)).ZH;
}
