namespace Slantwise.Engines.Planning.Practice;

/// <summary>Who practises on which mat.</summary>
public enum MatUse
{
    /// <summary>Each mat has its own group and its own queue.</summary>
    OwnGroups = 1,

    /// <summary>One queue: whoever is first takes whichever mat is free.</summary>
    OneQueue = 2,
}
