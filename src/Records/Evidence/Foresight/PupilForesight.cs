using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Records.Evidence.Foresight;

/// <summary>What one pupil's predictions say. For a talk with that pupil, beside nobody else's.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Label">What to call the pupil.</param>
/// <param name="ComparedSetCount">Sets with a prediction that could be compared with what came.</param>
/// <param name="Bias">How much more is said than was to be expected, drawn towards the class; it rests on the sets of which enough was known before.</param>
/// <param name="EntryIds">The predictions and tries it rests on.</param>
public sealed record PupilForesight(Guid PupilId, string Label, int ComparedSetCount, PupilBias Bias, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>Below this many sets no side is named. A working rule, no source.</summary>
    public const int EnoughSetCount = 3;

    /// <summary>Where an even chance was to be expected, 5 of 10, how many of ten the pupil is expected to say.</summary>
    public double OfEvenFraction => EvenChance.Of(Bias.MeanLogits);

    /// <summary>The same, lower end of the range.</summary>
    public double LowOfEvenFraction => EvenChance.Of(Bias.LowLogits);

    /// <summary>The same, upper end.</summary>
    public double HighOfEvenFraction => EvenChance.Of(Bias.HighLogits);

    /// <summary>The side, where it is certain enough and the pupil's own: under 3 sets, or where the class speaks more, there is none.</summary>
    public BiasSign Sign => Bias.SetCount < EnoughSetCount || IsMostlyClass ? BiasSign.Unclear : Bias.Sign(ClassForesight.SureFraction);

    /// <summary>Whether the class speaks more than the pupil's own sets.</summary>
    public bool IsMostlyClass => Bias.SetCount == 0 || Bias.DataFraction < .5;
}
