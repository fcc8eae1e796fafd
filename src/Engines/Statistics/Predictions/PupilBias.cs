namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>How much a pupil's predictions lie above what was to be expected, in logits, drawn towards the class as far as there is little to go by.</summary>
/// <param name="MeanLogits">The expected bias: above 0 more is predicted. 1 logit turns 5 of 10 into 7 of 10.</param>
/// <param name="SdLogits">Its standard deviation.</param>
/// <param name="LowLogits">Lower end of the middle 90 in 100.</param>
/// <param name="HighLogits">Upper end.</param>
/// <param name="OverFraction">The chance that it lies above 0.</param>
/// <param name="DataFraction">How much the pupil's own sets took off the variance there is without them, 0 to 1: below 1/2 it is mostly what the class says of anybody.</param>
/// <param name="SetCount">The sets behind it; with none it is what the class says of anybody.</param>
/// <param name="TrialCount">Their trials.</param>
public readonly record struct PupilBias(
    double MeanLogits, double SdLogits, double LowLogits, double HighLogits, double OverFraction, double DataFraction, int SetCount, int TrialCount)
{
    /// <summary>The side, if it is certain enough.</summary>
    /// <param name="certaintyFraction">How large its chance must be, above 1/2 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A certainty outside 1/2 to 1.</exception>
    public BiasSign Sign(double certaintyFraction)
    {
        if (!(certaintyFraction is > .5 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(certaintyFraction), certaintyFraction, "A certainty lies above 1/2 and up to 1: otherwise two signs could hold at once.");
        return OverFraction >= certaintyFraction ? BiasSign.Over : 1 - OverFraction >= certaintyFraction ? BiasSign.Under : BiasSign.Unclear;
    }
}
