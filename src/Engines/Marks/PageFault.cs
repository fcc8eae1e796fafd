namespace Slantwise.Engines.Marks;

/// <summary>Why a form as a whole cannot be trusted.</summary>
public enum PageFault
{
    /// <summary>It can.</summary>
    None = 0,

    /// <summary>Too few of the black squares were found, or they do not fit together.</summary>
    NotFound = 1,

    /// <summary>Too few pixels a millimetre.</summary>
    TooSmall = 2,

    /// <summary>Too blurred: the outlines of fields cannot be told from paper.</summary>
    Blurred = 3,

    /// <summary>Too dark, too pale, or glare or shadow over fields.</summary>
    BadLight = 4,

    /// <summary>Part of it lies outside the picture.</summary>
    CutOff = 5,
}
