namespace Slantwise.Engines.Marks;

/// <summary>From the traits of a field to the chance that a mark is meant, by logistic regression.</summary>
/// <remarks>Source: [Cox1958] the logistic model of a binary answer.</remarks>
public sealed class MarkModel
{
    /// <summary>Up to this chance a field is empty.</summary>
    public const double EmptyUpToFraction = .005;

    /// <summary>From this chance on it is marked. What lies between is for a person to look at.</summary>
    public const double MarkedFromFraction = .985;

    /// <summary>An empty field is believed only where so much of its outline can be seen: else something may hide a mark.</summary>
    public const double OutlineLeastFraction = .55;

    // Nor is it where ink lies around it in almost half of all directions, as of a ring that mostly runs on the outline, or where so much of it is inked.
    private const double AroundMostFraction = .42;
    private const double InkMostFraction = .045;

    // Nor where something with edges is darker than paper, though much paler than print.
    private const double FaintOfOutlineFraction = .2;
    private const double FaintSharpnessFraction = .25;

    // A mark is believed where it is a ring or comes near the middle: else it came in from beside the field. Without edges it is a filling, or a shadow or a
    // stain, which are paler than print and go on outside.
    private const double RingLeastFraction = .8;
    private const double NearestMostFraction = .42;
    private const double SharpnessLeastFraction = .45;
    private const double FilledLeastFraction = .8;
    private const double DarkOfOutlineFraction = .8;
    private const double ClearAroundFraction = .5;
    private const double ClearInsideFraction = .25;

    private const double GrainFactor = 1.5;

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
    public const int TermCount = 11;

    /// <summary>The model as fitted.</summary>
    public static MarkModel Fitted { get; } = new(MarkCoefficients.Logits);

    /// <summary>What the coefficients are multiplied by, each 0 to 1.</summary>
    /// <param name="traits">A field's.</param>
    /// <returns>
    /// One, then: ink; darkness against an outline's; sharpness; a ring around; a dark filling; a long stroke near the middle; the same with sharp edges; darkness
    /// near the middle; ink beside much more ink in the group; ink without edges that is no filling.
    /// </returns>
    public static IReadOnlyList<double> Terms(MarkTraits traits)
    {
        var outline = Math.Max(traits.PageOutlineFraction, .05);
        // Grain alone makes a little of both.
        var grain = GrainFactor * traits.GrainFraction;
        var ink = Math.Sqrt(Math.Clamp(traits.InkFraction, 0, .25) / .25);
        var upper = Math.Clamp((traits.UpperDarknessFraction - grain) / outline, 0, 1.2) / 1.2;
        var sharpness = Math.Max(0, traits.SharpnessFraction - grain / outline);
        var sharp = Math.Min(1, sharpness);
        var around = Math.Clamp((traits.AroundFraction - .55) / .35, 0, 1);
        var full = Math.Clamp((traits.InkFraction - .6) / .3, 0, 1);
        var near = Math.Clamp((.62 - traits.NearestFraction) / .25, 0, 1);
        var stroke = Math.Clamp(traits.StrokeMm, 0, 3) / 3;
        var less = Math.Clamp((.3 - traits.GroupFraction) / .3, 0, 1);
        return
        [
            1, ink, upper, sharp, around, full * upper, near * stroke, near * stroke * sharp, near * upper, less * ink,
            ink * (1 - Math.Min(1, sharpness / .5)) * (1 - full),
        ];
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
        var verdict = chance >= MarkedFromFraction ? IsBelievedMark(traits) ? MarkVerdict.Marked : MarkVerdict.Doubtful
            : chance <= EmptyUpToFraction && IsBelievedEmpty(traits) ? MarkVerdict.Empty : MarkVerdict.Doubtful;
        return new(traits.Key, verdict, chance);
    }

    /// <summary>Whether a field is in doubt for so little that it is empty if another of its group is marked: ink around it, less than a ring; a faint or short stroke.</summary>
    internal static bool IsEmptyBesideAMark(MarkTraits traits, FieldReading reading) =>
        reading is { Verdict: MarkVerdict.Doubtful, MarkedFraction: <= EmptyUpToFraction } && traits.AroundFraction < RingLeastFraction && IsClear(traits);

    private static bool IsBelievedEmpty(MarkTraits traits) => traits.AroundFraction < AroundMostFraction && IsClear(traits)
        && (traits.UpperDarknessFraction < FaintOfOutlineFraction * traits.PageOutlineFraction || traits.SharpnessFraction < FaintSharpnessFraction);

    private static bool IsClear(MarkTraits traits) => traits.OutlineSeenFraction >= OutlineLeastFraction && traits.InkFraction < InkMostFraction;

    private static bool IsBelievedMark(MarkTraits traits)
    {
        var isRing = traits.AroundFraction >= RingLeastFraction;
        var isNear = traits.NearestFraction <= NearestMostFraction;
        if (traits.SharpnessFraction >= SharpnessLeastFraction) return isRing || isNear;
        var isDark = traits.UpperDarknessFraction >= DarkOfOutlineFraction * traits.PageOutlineFraction;
        return isRing
            ? isDark || traits.InkFraction < ClearInsideFraction
            : isNear && traits.InkFraction >= FilledLeastFraction && (isDark || traits.AroundFraction < ClearAroundFraction);
    }
}
