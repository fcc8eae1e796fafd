namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>What a reader of predictions has to know before believing what is said of them.</summary>
[Flags]
public enum PredictionCautions
{
    /// <summary>Nothing to say.</summary>
    None = 0,

    /// <summary>No prediction was followed by a trial.</summary>
    NoTrials = 1,

    /// <summary>Fewer than 10 trials.</summary>
    FewTrials = 1 << 1,

    /// <summary>All trials succeeded or all failed: nothing could be told apart, so skill is not defined.</summary>
    OneOutcome = 1 << 2,

    /// <summary>Something was called certain and did not happen: its surprise has no bound, so the log loss is none.</summary>
    CertainAndWrong = 1 << 3,

    /// <summary>Fewer than 6 pupils: how far pupils differ is mostly assumed.</summary>
    FewPupils = 1 << 4,
}
