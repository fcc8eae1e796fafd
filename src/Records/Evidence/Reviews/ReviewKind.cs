namespace Slantwise.Records.Evidence.Reviews;

/// <summary>What a class's lessons can raise a question about.</summary>
public enum ReviewKind
{
    /// <summary>A cue that stays open for many.</summary>
    Cue = 1,

    /// <summary>What was decided after sets with few successes.</summary>
    Decisions = 2,

    /// <summary>Predictions beside what came.</summary>
    Predictions = 3,

    /// <summary>A level nobody used.</summary>
    Level = 4,

    /// <summary>An outcome whose tasks nobody tried.</summary>
    Outcome = 5,

    /// <summary>Not enough tries to say anything.</summary>
    NotEnough = 6,
}
