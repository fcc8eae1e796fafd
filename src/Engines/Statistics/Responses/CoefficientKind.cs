namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What a coefficient of the model belongs to.</summary>
public enum CoefficientKind
{
    /// <summary>The middle of the levels' difficulty at the doses' fixed amounts.</summary>
    Middle = 1,

    /// <summary>How much harder a level becomes with the logarithm of its dose; the index is the <see cref="DoseMeasure"/>.</summary>
    DoseSlope = 2,

    /// <summary>How much of the given order shows in the outcomes.</summary>
    Order = 3,

    /// <summary>A further covariate of levels; the index is its place.</summary>
    LevelCovariate = 4,

    /// <summary>What the class gains a lesson.</summary>
    Growth = 5,

    /// <summary>How much of the first prediction shows in ability.</summary>
    Prediction = 6,

    /// <summary>How pupils without a first prediction differ.</summary>
    NoPrediction = 7,

    /// <summary>A further covariate of pupils; the index is its place.</summary>
    PupilCovariate = 8,
}
