using Slantwise.Desk.Words;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>What to mind about the model's numbers, as sentences: what it is, how much it is, what could be done about it.</summary>
public static class CautionText
{
    // In the order in which they weaken what is shown: first what undoes it all.
    private static readonly ResponseCaution[] Order =
    [
        ResponseCaution.NoTrials, ResponseCaution.NotConverged, ResponseCaution.ChoiceMattered, ResponseCaution.Disconnected,
        ResponseCaution.OneSided, ResponseCaution.SpreadAtEdge, ResponseCaution.MostlyAssumption, ResponseCaution.TimesLeftAside,
    ];

    /// <summary>One line a caution, each once.</summary>
    /// <param name="cautions">What to mind; several are joined.</param>
    /// <param name="choice">The levels read in two ways, for the words about choice; may be empty.</param>
    /// <returns>Empty where nothing is to mind. Without any try the rest goes without saying.</returns>
    public static IReadOnlyList<CautionLine> Lines(ResponseCaution cautions, IReadOnlyList<ChoiceComparison> choice)
    {
        if (cautions.HasFlag(ResponseCaution.NoTrials)) cautions = ResponseCaution.NoTrials;
        return [.. Order.Where(c => cautions.HasFlag(c)).Select(c => new CautionLine(
            c, ChanceWords.Say("Caution" + c), c == ResponseCaution.ChoiceMattered ? Choice(choice) : "", ChanceWords.Say("Do" + c)))];
    }

    // Of several differences the one of all levels says most; otherwise the clearest.
    private static string Choice(IReadOnlyList<ChoiceComparison> choice)
    {
        var far = choice.Where(c => c.IsFar).OrderBy(c => c.Slope is not null).ThenByDescending(c => Math.Abs(c.GapSd)).ToList();
        if (far.Count == 0) return "";
        var first = far[0];
        return first.Slope switch
        {
            null => ChanceWords.Say("ChoiceStretch", ChanceText.OfTen(Chance(first.ConditionalLogits / first.MarginalLogits * Math.Log(3.0 / 7)))),
            CoefficientKind.DoseSlope => ChanceWords.Say(
                "ChoiceDose", ChanceText.OfTen(Chance(-Math.Log(2) * first.MarginalLogits)), ChanceText.OfTen(Chance(-Math.Log(2) * first.ConditionalLogits))),
            _ => ChanceWords.Say(first.GapSd > 0 ? "ChoiceOrderMore" : "ChoiceOrderLess"),
        };
    }

    private static double Chance(double logit) => 1 / (1 + Math.Exp(-logit));
}
