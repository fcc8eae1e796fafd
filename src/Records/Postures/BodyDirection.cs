namespace Slantwise.Records.Postures;

/// <summary>A level direction as the performer's own body has it.</summary>
public enum BodyDirection
{
    /// <summary>Where the belly points.</summary>
    Front,

    /// <summary>Where the back points.</summary>
    Back,

    /// <summary>The performer's left.</summary>
    Left,

    /// <summary>The performer's right.</summary>
    Right,

    /// <summary>Where the head lies, in postures with a level trunk.</summary>
    Headwards,

    /// <summary>Where the hips lie, in postures with a level trunk.</summary>
    Footwards,
}
