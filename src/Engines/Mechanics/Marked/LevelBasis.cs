namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>From what the direction of gravity on a picture is known.</summary>
public enum LevelBasis
{
    /// <summary>From the edges of the picture, held about level, put right by the line of what touches the floor as far as that is known better.</summary>
    PictureAndFloor,

    /// <summary>From the line of what touches the floor alone: for a picture that was held aslant.</summary>
    Floor,

    /// <summary>From something upright that was marked, such as the edge of a door.</summary>
    Upright,
}
