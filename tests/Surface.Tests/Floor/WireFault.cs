namespace Slantwise.Surface.Tests.Floor;

/// <summary>What a bad network does to a request.</summary>
internal enum WireFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It never arrives.</summary>
    LostBefore,

    /// <summary>It arrives, and its answer does not.</summary>
    LostAfter,

    /// <summary>It arrives twice.</summary>
    Twice,

    /// <summary>It seems lost, and arrives after the next one.</summary>
    Late,

    /// <summary>It takes its time.</summary>
    Slow,

    /// <summary>Its answer breaks off in the middle.</summary>
    HalfAnswer,

    /// <summary>A gate of the network answers with a page of its own.</summary>
    OtherPage,
}
