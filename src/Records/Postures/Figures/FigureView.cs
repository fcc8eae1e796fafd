namespace Slantwise.Records.Postures.Figures;

/// <summary>From where a figure is seen, always so that the first body's face is towards the right or the viewer rather than away.</summary>
public enum FigureView
{
    /// <summary>From the side on which the face looks to the right: the performer's right side when standing, the left in a handstand.</summary>
    Side,

    /// <summary>From the front; in a posture that looks back, such as a handstand, from there.</summary>
    Front,

    /// <summary>From the front, turned 40° to the side and from a little above, so that the floor is an area.</summary>
    ThreeQuarter,
}
