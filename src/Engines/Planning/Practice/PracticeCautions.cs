namespace Slantwise.Engines.Planning.Practice;

/// <summary>What to know before believing a plan's numbers.</summary>
[Flags]
public enum PracticeCautions
{
    /// <summary>Nothing in particular.</summary>
    None = 0,

    /// <summary>Talk, pauses and changes of stations leave no time at the mats.</summary>
    NoTime = 1,

    /// <summary>A group is too small for one performer with partners and observers: nobody there is left to take the part.</summary>
    TooFewForRoles = 2,

    /// <summary>An observer should write, but in a group all perform at once.</summary>
    NobodyToRecord = 4,

    /// <summary>More mats, or places on them, than pupils at them: some stay empty.</summary>
    EmptyPlaces = 8,

    /// <summary>Somebody has not one trial.</summary>
    SomebodyWithout = 16,
}
