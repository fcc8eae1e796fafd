namespace Slantwise.Engines.Statistics;

/// <summary>A decision beside the evidence of the set it followed. A pattern to talk about, never a mark.</summary>
public enum DecisionPattern
{
    /// <summary>Too few trials to say anything.</summary>
    NoEvidence = 0,

    /// <summary>Harder after a set that mostly succeeded.</summary>
    Progress = 1,

    /// <summary>The same again after a set that succeeded more often than not.</summary>
    Consolidate = 2,

    /// <summary>Easier after a set that mostly succeeded.</summary>
    Retreat = 3,

    /// <summary>Harder after a set in the middle.</summary>
    Stretch = 4,

    /// <summary>Easier after a set in the middle.</summary>
    SafeStep = 5,

    /// <summary>Harder after a set that mostly failed.</summary>
    Overreach = 6,

    /// <summary>The same again after a set that mostly failed.</summary>
    Persist = 7,

    /// <summary>Easier after a set that mostly failed.</summary>
    Adjust = 8,
}
