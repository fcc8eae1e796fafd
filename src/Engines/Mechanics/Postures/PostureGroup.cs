namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>The families of postures.</summary>
public enum PostureGroup
{
    /// <summary>On the feet.</summary>
    Upright,

    /// <summary>On large parts: seat, back, belly, shoulders.</summary>
    Patch,

    /// <summary>Weight on the hands, the hips not above the head.</summary>
    Hands,

    /// <summary>Hips above the head.</summary>
    Inverted,

    /// <summary>Two bodies.</summary>
    Partner,
}
