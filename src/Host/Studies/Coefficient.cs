using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Host.Studies;

/// <summary>One coefficient of agreement, whichever engine made it.</summary>
/// <param name="Name">Which, as JSON has it.</param>
/// <param name="Weighting">Its weights or scale; none where there is no choice.</param>
/// <param name="Count">The things it rests on.</param>
/// <param name="ValueFraction">The coefficient; none where it is not defined.</param>
/// <param name="ErrorFraction">Its standard error; none where there is none.</param>
/// <param name="LowFraction">Lower end of its range.</param>
/// <param name="HighFraction">Upper end.</param>
/// <param name="Cautions">What to know before believing it.</param>
internal sealed record Coefficient(
    string Name, string? Weighting, int Count, double? ValueFraction, double? ErrorFraction, double? LowFraction, double? HighFraction, AgreementCautions Cautions)
{
    /// <summary>Why it is not defined where no caution says it.</summary>
    public string? Reason { get; init; }

    public string Words => StudyWords.Say("Coefficient_" + Name) + (Weighting is null ? "" : ", " + StudyWords.Say("Weighting_" + Weighting));

    /// <summary>Why there is no value, or no error; empty where there is nothing to say.</summary>
    public string WhyNot => ValueFraction is not null ? Cautions.HasFlag(AgreementCautions.HangsOnOnePupil) ? StudyWords.Say("UndefinedWithoutOne") : ""
        : Reason is not null ? StudyWords.Say(Reason)
        : Cautions.HasFlag(AgreementCautions.OneCategory) ? StudyWords.Say("UndefinedOneCategory")
        : StudyWords.Say("UndefinedNoPairs");

    public object Json => new
    {
        name = Name, weighting = Weighting, count = Count, isDefined = ValueFraction is not null, ValueFraction, ErrorFraction, LowFraction, HighFraction,
        whyNot = ValueFraction is null ? WhyNot : null,
        cautions = CautionLines.Names(Cautions),
    };

    public static Coefficient Of(string name, string? weighting, AgreementFigure f) =>
        new(name, weighting, f.PairCount, f.ValueFraction, f.ErrorFraction, f.LowFraction, f.HighFraction, f.Cautions);

    public static Coefficient Of(string name, string? weighting, JackknifedFigure f) =>
        new(name, weighting, f.PupilCount, f.ValueFraction, f.ErrorFraction, f.LowFraction, f.HighFraction, f.Cautions);
}
