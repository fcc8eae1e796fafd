namespace Slantwise.Records.Scans.Intake;

/// <summary>What became of a form's code.</summary>
public enum CodeFound
{
    /// <summary>Read, and one of this school's.</summary>
    Read = 1,

    /// <summary>None was seen.</summary>
    None = 2,

    /// <summary>A code was seen and cannot be read: torn, smeared, covered.</summary>
    Damaged = 3,

    /// <summary>A sheet's code that does not belong to this school.</summary>
    OtherSchool = 4,

    /// <summary>A code that is no sheet's.</summary>
    Foreign = 5,
}
