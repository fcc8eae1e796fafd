namespace Slantwise.Records.Scans.Intake;

/// <summary>Whether anybody still has to look at a page.</summary>
public enum ScanState
{
    /// <summary>Somebody has to; the page's picture is kept until then.</summary>
    Waiting = 1,

    /// <summary>Nobody has to.</summary>
    Done = 2,

    /// <summary>Thrown away by a person; known, so that reading the same pile again does not bring it back.</summary>
    Discarded = 3,
}
