namespace Slantwise.Records.Safety;

/// <summary>What happens to a restriction on a day.</summary>
public enum RestrictionChangeKind
{
    /// <summary>It begins to hold.</summary>
    Begins = 1,

    /// <summary>It holds for the last time and ends by itself.</summary>
    LastDay = 2,

    /// <summary>It may be lifted from now on, by hand; until somebody does it goes on.</summary>
    MayBeLifted = 3,
}
