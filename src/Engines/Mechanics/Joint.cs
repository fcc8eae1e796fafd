namespace Slantwise.Engines.Mechanics;

/// <summary>The movements of the joints, as anatomy names them. All are 0 in upright standing with the arms hanging.</summary>
public enum Joint
{
    /// <summary>Pelvis on thorax, forwards; half of it is in the lower back, half below the chest.</summary>
    SpineFlexion,

    /// <summary>Spine sideways to the left.</summary>
    SpineLean,

    /// <summary>Spine turned to the left.</summary>
    SpineTwist,

    /// <summary>Chin to chest.</summary>
    NeckFlexion,

    /// <summary>Ear to the left shoulder.</summary>
    NeckLean,

    /// <summary>Face turned to the left.</summary>
    NeckTurn,

    /// <summary>Arm to the front and up; 180° beside the ears.</summary>
    ShoulderFlexion,

    /// <summary>Arm to its own side and up.</summary>
    ShoulderAbduction,

    /// <summary>Upper arm turned outwards about itself.</summary>
    ShoulderRotation,

    /// <summary>Elbow bent.</summary>
    ElbowFlexion,

    /// <summary>Forearm turned so that the palm faces back.</summary>
    ForearmPronation,

    /// <summary>Back of the hand towards the forearm.</summary>
    WristExtension,

    /// <summary>Thigh to the front.</summary>
    HipFlexion,

    /// <summary>Thigh to its own side.</summary>
    HipAbduction,

    /// <summary>Thigh turned outwards about itself.</summary>
    HipRotation,

    /// <summary>Knee bent.</summary>
    KneeFlexion,

    /// <summary>Toes towards the shin.</summary>
    AnkleFlexion,
}
