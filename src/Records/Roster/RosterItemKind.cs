namespace Slantwise.Records.Roster;

/// <summary>What an item of an import's preview is about.</summary>
public enum RosterItemKind
{
    /// <summary>A class.</summary>
    Class = 1,

    /// <summary>A pupil.</summary>
    Pupil = 2,

    /// <summary>That a pupil is in a class.</summary>
    Membership = 3,
}
