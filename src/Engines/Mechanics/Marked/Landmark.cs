namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>The points of a body that are marked on a picture, from the head to the toes.</summary>
public enum Landmark
{
    /// <summary>The top of the head.</summary>
    Crown,

    /// <summary>The angle of the jaw, below the ear.</summary>
    Jaw,

    /// <summary>The middle of the shoulder joint.</summary>
    Shoulder,

    /// <summary>The middle of the elbow.</summary>
    Elbow,

    /// <summary>The middle of the wrist.</summary>
    Wrist,

    /// <summary>The tip of the middle finger.</summary>
    Fingertip,

    /// <summary>The middle of the waist, at the height of the navel. Only needed where the back is bent.</summary>
    Waist,

    /// <summary>The middle of the hip joint.</summary>
    Hip,

    /// <summary>The middle of the knee.</summary>
    Knee,

    /// <summary>The middle of the ankle.</summary>
    Ankle,

    /// <summary>The back end of the heel.</summary>
    Heel,

    /// <summary>The tip of the longest toe.</summary>
    Toe,
}
