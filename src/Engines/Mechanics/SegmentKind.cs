namespace Slantwise.Engines.Mechanics;

/// <summary>The sixteen segments of the body. A paired one is named once; <see cref="Side"/> says which.</summary>
public enum SegmentKind
{
    /// <summary>Pelvis: navel to the middle of the hips. The root of the joint tree.</summary>
    LowerTrunk,

    /// <summary>Lower end of the breastbone to navel.</summary>
    MiddleTrunk,

    /// <summary>Top of the breastbone to its lower end; carries neck and shoulders.</summary>
    UpperTrunk,

    /// <summary>Crown to the angle of the jaw.</summary>
    Head,

    /// <summary>Shoulder to elbow.</summary>
    UpperArm,

    /// <summary>Elbow to wrist.</summary>
    Forearm,

    /// <summary>Wrist to the knuckle of the middle finger, the fingers' mass included.</summary>
    Hand,

    /// <summary>Hip to knee.</summary>
    Thigh,

    /// <summary>Knee to ankle.</summary>
    Shank,

    /// <summary>Heel to the tip of the longest toe.</summary>
    Foot,
}
