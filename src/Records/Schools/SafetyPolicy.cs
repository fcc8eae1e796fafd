namespace Slantwise.Records.Schools;

/// <summary>What a school allows on its floor. It removes levels before anything else does.</summary>
/// <remarks>Rules differ between authorities, so these are settings; the defaults are the cautious ones.</remarks>
public sealed record SafetyPolicy
{
    /// <summary>Weight on the head. Not allowed until the teacher changes it.</summary>
    public PolicyChoice HeadWeight { get; init; } = PolicyChoice.NotAllowed;

    /// <summary>Hips above the head, with no weight on the head.</summary>
    public PolicyChoice Inversion { get; init; } = PolicyChoice.Planned;

    /// <summary>Rolls over the back or the shoulder.</summary>
    public PolicyChoice Rolls { get; init; } = PolicyChoice.Planned;
}
