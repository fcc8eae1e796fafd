namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What makes a level of a task harder or easier by degrees. Each has its own slope in the model; the slopes share a prior.</summary>
public enum DoseMeasure
{
    /// <summary>A hold, in seconds; longer is harder.</summary>
    Hold = 1,

    /// <summary>Repetitions without a miss; more is harder.</summary>
    Repetitions = 2,

    /// <summary>A distance, in metres; longer is harder.</summary>
    Distance = 3,

    /// <summary>A height, in metres; higher is harder.</summary>
    Height = 4,

    /// <summary>The width of a target, in metres; smaller is harder.</summary>
    TargetSize = 5,
}
