namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What the model assumes before any data. With a full class the data outweigh it; with a few trials it is most of the answer, and the fit says so.</summary>
public sealed record ResponsePriors
{
    /// <summary>The assumptions for a class about which nothing else is known.</summary>
    public static ResponsePriors Standard { get; } = new();

    /// <summary>The spread of abilities in a class; none to let the data alone say it.</summary>
    public ScalePrior? Ability { get; init; } = new(1.2, 0.3);

    /// <summary>The spread of what order and dose do not say about levels; none to let the data alone say it.</summary>
    public ScalePrior? Residual { get; init; } = new(0.5, 0.5);

    /// <summary>How much of the residual's variance levels of one task share, 0 to below 1.</summary>
    public double TaskShareFraction { get; init; } = 0.5;

    /// <summary>The middle of the levels' difficulty at the doses' fixed amounts.</summary>
    public NormalPrior Middle { get; init; } = new(0, 3);

    /// <summary>The slope of a dose, common to all measures: logits for each unit of its logarithm.</summary>
    public NormalPrior DoseSlope { get; init; } = new(1, 1);

    /// <summary>How far one measure's slope may well be from the common one, 0 or more.</summary>
    public double OwnSlopeSdLogits { get; init; } = 0.5;

    /// <summary>How much of the teacher's order shows in the outcomes: 1 if it is right in full.</summary>
    public NormalPrior Order { get; init; } = new(1, 0.5);

    /// <summary>Any further covariate of a level.</summary>
    public NormalPrior LevelCovariate { get; init; } = new(0, 1);

    /// <summary>What a class gains a lesson.</summary>
    public NormalPrior Growth { get; init; } = new(0, 1);

    /// <summary>How much of a first prediction shows in ability.</summary>
    public NormalPrior Prediction { get; init; } = new(0.3, 0.3);

    /// <summary>Any further covariate of a pupil, and having made no prediction.</summary>
    public NormalPrior PupilCovariate { get; init; } = new(0, 1);
}
