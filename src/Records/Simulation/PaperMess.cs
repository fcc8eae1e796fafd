namespace Slantwise.Records.Simulation;

/// <summary>How complete the records of a lesson are, and what the teacher adds to them. Each is a chance from 0 to 1.</summary>
public sealed record PaperMess
{
    /// <summary>A lesson in which everything was filled in, timed and typed without a slip, and nothing was added.</summary>
    public static PaperMess None { get; } = new()
    {
        AbsentFraction = 0,
        ForgottenPredictionFraction = 0,
        MissingDecisionFraction = 0,
        UntickedSetFraction = 0,
        UntimedTrialFraction = 0,
        CorrectedTrialFraction = 0,
        VisitFraction = 0,
        TeacherCheckFraction = 0,
    };

    /// <summary>A pupil is not in a lesson.</summary>
    public double AbsentFraction { get; init; } = 0.05;

    /// <summary>A set has no prediction.</summary>
    public double ForgottenPredictionFraction { get; init; } = 0.06;

    /// <summary>A set has no decision.</summary>
    public double MissingDecisionFraction { get; init; } = 0.06;

    /// <summary>Nobody looked at the cues of a set.</summary>
    public double UntickedSetFraction { get; init; } = 0.08;

    /// <summary>A hold is only ticked or crossed, not timed.</summary>
    public double UntimedTrialFraction { get; init; } = 0.15;

    /// <summary>A trial was typed the wrong way round first and then corrected.</summary>
    public double CorrectedTrialFraction { get; init; } = 0.01;

    /// <summary>The teacher talks with a pupil in a lesson and notes it.</summary>
    public double VisitFraction { get; init; } = 0.15;

    /// <summary>The teacher checks a cue in a set.</summary>
    public double TeacherCheckFraction { get; init; } = 0.04;
}
