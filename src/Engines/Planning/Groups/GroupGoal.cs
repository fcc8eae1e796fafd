namespace Slantwise.Engines.Planning.Groups;

/// <summary>What groups should look like beyond the wishes.</summary>
public enum GroupGoal
{
    /// <summary>Any that meets the wishes.</summary>
    Any = 0,

    /// <summary>Groups as alike as can be, each of them mixed: the smallest share of the differences between groups.</summary>
    Mix = 1,

    /// <summary>Alike within, so that neighbours in experience work together: the largest share of the differences between groups.</summary>
    Match = 2,
}
