namespace Slantwise.Records.Halls;

/// <summary>What to know of a rotation before relying on it.</summary>
public enum StationWarning
{
    /// <summary>The lesson plans no practice: minutes count from the begin of practice.</summary>
    NoPractice = 1,

    /// <summary>All rounds together take longer than practice.</summary>
    TooLong = 2,

    /// <summary>A round is interrupted by another phase.</summary>
    Interrupted = 3,

    /// <summary>More groups than stations: some share one.</summary>
    Shared = 4,

    /// <summary>A station has no mat.</summary>
    WithoutMat = 5,
}
