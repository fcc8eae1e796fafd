namespace Slantwise.Records.Evidence.Reach;

/// <summary>How the levels of a task stand to a pupil. For a question to the teacher; no mark and no order of pupils.</summary>
public enum ReachStanding
{
    /// <summary>Some allowed level is probably in the band.</summary>
    Within,

    /// <summary>Policy or restrictions leave no level.</summary>
    NothingAllowed,

    /// <summary>Every allowed level is probably certain already.</summary>
    AllCertain,

    /// <summary>Every allowed level is probably too hard still.</summary>
    AllTooHard,

    /// <summary>Too little is known, or the band falls between two levels.</summary>
    Open,
}
