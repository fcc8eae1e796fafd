namespace Slantwise.Engines.Planning.Groups;

/// <summary>What a wish asks.</summary>
public enum GroupWishKind
{
    /// <summary>Two pupils in one group.</summary>
    Together = 1,

    /// <summary>Two pupils in different groups.</summary>
    Apart = 2,

    /// <summary>Somebody who may support in a group.</summary>
    SupporterIn = 3,
}
