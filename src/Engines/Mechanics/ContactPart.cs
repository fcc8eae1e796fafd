namespace Slantwise.Engines.Mechanics;

/// <summary>The parts of a body that can carry it.</summary>
public enum ContactPart
{
    /// <summary>The whole sole.</summary>
    Foot,

    /// <summary>Ball of the foot and toes.</summary>
    Toes,

    /// <summary>The heel.</summary>
    Heel,

    /// <summary>The instep, with the toes pointed.</summary>
    Instep,

    /// <summary>The flat hand.</summary>
    Hand,

    /// <summary>The fingertips.</summary>
    Fingertips,

    /// <summary>The forearm.</summary>
    Forearm,

    /// <summary>The elbow.</summary>
    Elbow,

    /// <summary>The knee.</summary>
    Knee,

    /// <summary>The shin, knee to ankle.</summary>
    Shank,

    /// <summary>The seat.</summary>
    Seat,

    /// <summary>The lower back.</summary>
    LowerBack,

    /// <summary>The back of the shoulders.</summary>
    UpperBack,

    /// <summary>The outside of one shoulder.</summary>
    Shoulder,

    /// <summary>The side of the hip.</summary>
    Hip,

    /// <summary>The belly.</summary>
    Belly,

    /// <summary>The crown of the head.</summary>
    Crown,

    /// <summary>The forehead.</summary>
    Forehead,

    /// <summary>The front of the thigh, above the knee.</summary>
    Thigh,
}
