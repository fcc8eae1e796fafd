namespace Slantwise.Engines.Marks;

/// <summary>From the traits of a field to the chance that a mark is meant, by logistic regression.</summary>
/// <remarks>Source: [Cox1958] the logistic model of a binary answer.</remarks>
public sealed class MarkModel
{
    /// <summary>Up to this chance a field is empty.</summary>
    public const double EmptyUpToFraction = .03;

    /// <summary>From this chance on it is marked. What lies between is for a person to look at.</summary>
    public const double MarkedFromFraction = .97;

    /// <summary>An empty field is believed only where so much of its outline can be seen: else something may hide a mark.</summary>
    public const double OutlineLeastFraction = .55;

    private readonly double[] _coefficients;

    /// <summary>A model with these coefficients.</summary>
    /// <param name="coefficientsLogits">One a term, in the order of <see cref="Terms"/>.</param>
    /// <exception cref="ArgumentException">Not as many as there are terms.</exception>
    public MarkModel(IReadOnlyList<double> coefficientsLogits)
    {
        if (coefficientsLogits.Count != TermCount) throw new ArgumentException($"A model has {TermCount} coefficients, not {coefficientsLogits.Count}.", nameof(coefficientsLogits));
        _coefficients = [.. coefficientsLogits];
    }

    /// <summary>How many terms there are.</summary>
    public const int TermCount = 9;

    /// <summary>The model as fitted.</summary>
    public static MarkModel Fitted { get; } = new(MarkCoefficients.Logits);

    /// <summary>What the coefficients are multiplied by, each about 0 to 1.</summary>
    /// <param name="traits">A field's.</param>
    /// <returns>One, then: ink, darkness against an outline's, length of stroke, sharpness, ink around, mean darkness, stroke times sharpness, more ink beside it in the group.</returns>
    public static IReadOnlyList<double> Terms(MarkTraits traits)
    {
        var ink = Math.Sqrt(Math.Clamp(traits.InkFraction, 0, .25) / .25);
        var upper = Math.Clamp(traits.UpperDarknessFraction / Math.Max(traits.PageOutlineFraction, .05), 0, 1.5) / 1.5;
        var stroke = Math.Clamp(traits.StrokeMm, 0, 3) / 3;
        var sharp = Math.Clamp(traits.SharpnessFraction, 0, 1.2) / 1.2;
        var around = Math.Clamp((traits.AroundFraction - .6) / .4, 0, 1);
        var mean = Math.Clamp(traits.MeanDarknessFraction, 0, .4) / .4;
        return [1, ink, upper, stroke, sharp, around, mean, stroke * sharp, Math.Clamp((.3 - traits.GroupFraction) / .3, 0, 1)];
    }

    /// <summary>The chance that a mark is meant.</summary>
    /// <param name="traits">A field's.</param>
    public double MarkedFraction(MarkTraits traits)
    {
        var (terms, logit) = (Terms(traits), 0.0);
        for (var i = 0; i < TermCount; i++) logit += _coefficients[i] * terms[i];
        return 1 / (1 + Math.Exp(-logit));
    }

    /// <summary>What a field shows.</summary>
    /// <param name="traits">Its traits.</param>
    public FieldReading Read(MarkTraits traits)
    {
        var chance = MarkedFraction(traits);
        var verdict = chance >= MarkedFromFraction ? MarkVerdict.Marked
            : chance > EmptyUpToFraction ? MarkVerdict.Doubtful
            : traits.OutlineSeenFraction < OutlineLeastFraction ? MarkVerdict.Doubtful : MarkVerdict.Empty;
        return new(traits.Key, verdict, chance);
    }
}
