namespace Slantwise.Engines.Mechanics;

/// <summary>Which column of a growth table to read. Never a pupil's own.</summary>
public enum Sex
{
    /// <summary>The table of girls.</summary>
    Female,

    /// <summary>The table of boys.</summary>
    Male,
}
