namespace Slantwise.Records.Halls;

/// <summary>What a task's falling circle is reckoned from.</summary>
public enum FallGround
{
    /// <summary>The highest posture of its levels.</summary>
    Posture = 1,

    /// <summary>The floor that its design keeps free, which is more than its postures are high, or it has none.</summary>
    ClearSpace = 2,

    /// <summary>Neither is known: somebody who stands upright.</summary>
    Standing = 3,
}
