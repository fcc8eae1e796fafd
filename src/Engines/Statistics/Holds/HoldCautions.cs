namespace Slantwise.Engines.Statistics.Holds;

/// <summary>What a reader of hold times has to know before believing them.</summary>
[Flags]
public enum HoldCautions
{
    /// <summary>Nothing to say.</summary>
    None = 0,

    /// <summary>There is no hold.</summary>
    NoHolds = 1,

    /// <summary>Fewer than 10 holds.</summary>
    FewHolds = 1 << 1,

    /// <summary>No hold ended: all were stopped while held, so how long they could last is unknown.</summary>
    NobodyFell = 1 << 2,

    /// <summary>Holds were stopped at more than one time. If pupils chose these targets, stronger pupils were watched longer, and one curve over all targets misleads: look at each target.</summary>
    MixedTargets = 1 << 3,

    /// <summary>Pupils have several holds and the test at hand takes them for strangers: it is too sure.</summary>
    RepeatedPupils = 1 << 4,

    /// <summary>Errors come from fewer than 6 pupils, too few to trust.</summary>
    FewPupils = 1 << 5,

    /// <summary>All holds fit one length exactly, so nothing says how far lengths spread; no curve is given.</summary>
    NoSpread = 1 << 6,

    /// <summary>Every hold was only judged at one length; no curve is given, for a share says it all.</summary>
    OneLength = 1 << 7,

    /// <summary>In some group all that is known is "at least" or all that is known is "at most"; no curve is given.</summary>
    OneSided = 1 << 8,

    /// <summary>Longer targets were met at least as often as shorter ones; no curve is given.</summary>
    NoSlope = 1 << 9,

    /// <summary>The search for the best curve ended before it was good; no curve is given.</summary>
    NotConverged = 1 << 10,
}
