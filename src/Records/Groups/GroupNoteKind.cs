namespace Slantwise.Records.Groups;

/// <summary>What a note about groups is about.</summary>
public enum GroupNoteKind
{
    /// <summary>No groups could be made: sizes and fixed places cannot both be kept.</summary>
    NoGroups = 1,

    /// <summary>Somebody is in no group yet.</summary>
    InNoGroup = 2,

    /// <summary>A wish about two pupils is not met.</summary>
    WishNotMet = 3,

    /// <summary>A group has nobody who may support.</summary>
    NoSupporter = 4,

    /// <summary>A group has more or fewer pupils than even ones would have.</summary>
    UnevenSize = 5,
}
