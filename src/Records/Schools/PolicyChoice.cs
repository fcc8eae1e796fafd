namespace Slantwise.Records.Schools;

/// <summary>How far a school allows a demand on the body.</summary>
public enum PolicyChoice
{
    /// <summary>Levels with this demand are removed for everybody.</summary>
    NotAllowed = 0,

    /// <summary>Allowed where the teacher has planned it: mats, progression, supervision.</summary>
    Planned = 1,
}
