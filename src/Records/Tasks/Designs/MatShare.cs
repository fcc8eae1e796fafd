namespace Slantwise.Records.Tasks.Designs;

/// <summary>Whom a number of mats is for.</summary>
public enum MatShare
{
    /// <summary>Each pupil.</summary>
    Pupil = 1,

    /// <summary>Each two pupils.</summary>
    Pair = 2,
}
