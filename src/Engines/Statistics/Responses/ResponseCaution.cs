namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What to mind about a number. Words are made outside; the numbers behind each stand beside it.</summary>
[Flags]
public enum ResponseCaution
{
    /// <summary>Nothing in particular.</summary>
    None = 0,

    /// <summary>More of it was assumed beforehand than seen: the data share is under one half.</summary>
    MostlyAssumption = 1,

    /// <summary>Nobody links the two by trials, not even through others: they are compared only by what was assumed.</summary>
    Disconnected = 2,

    /// <summary>The search did not reach its end; the numbers may still move.</summary>
    NotConverged = 4,

    /// <summary>A spread ran to the end of its range: the data cannot tell it from none, or from any.</summary>
    SpreadAtEdge = 8,

    /// <summary>What pupils chose seems to have carried news of its own: two ways of reading the trials disagree.</summary>
    ChoiceMattered = 16,

    /// <summary>Not everything was both managed and missed in a linked way: without assumptions some difficulties would have no finite value.</summary>
    OneSided = 32,

    /// <summary>Some stopwatch times contradict their tick; the tick counts.</summary>
    TimesLeftAside = 64,

    /// <summary>There is not a single trial behind it.</summary>
    NoTrials = 128,
}
