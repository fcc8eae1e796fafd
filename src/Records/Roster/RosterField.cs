namespace Slantwise.Records.Roster;

/// <summary>What an import may change about a class or a pupil.</summary>
public enum RosterField
{
    /// <summary>The name of the class, or what the pupil is called.</summary>
    Name = 1,

    /// <summary>The pupil's code.</summary>
    Code = 2,

    /// <summary>The id the roster files give.</summary>
    RosterKey = 3,
}
