using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Records.Evidence.SelfChecks;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>How two adults' checks agree, as words.</summary>
public static class ObserverText
{
    // As everywhere on these pages: under ten checks only the counts.
    private const int EnoughPairCount = 10;

    /// <summary>How many checks came out the same, with their range.</summary>
    public static string Same(ObserverChecks checks)
    {
        var agreement = checks.Agreement;
        var said = UnitWords.Say("ObserversSame", agreement.Table.AgreedCount, agreement.Table.PairCount, checks.CueCount, agreement.PupilCount);
        if (agreement.Table.PairCount < EnoughPairCount || agreement.AgreedRange is not { } range) return said + " " + UnitWords.Say("ObserversFew");
        var (low, high) = DotsOfTen.TenthsOf(range.LowFraction, range.HighFraction);
        return said + " " + UnitWords.Say("ObserversRange", low, high);
    }

    /// <summary>Agreement on what was met, and on what was not.</summary>
    public static string Parts(ObserverChecks checks)
    {
        var table = checks.Agreement.Table;
        return UnitWords.Say("ObserversParts", table[1, 1], table.PairCount - table[0, 0], table[0, 0], table.PairCount - table[1, 1]);
    }

    /// <summary>Kappa and AC1, undefined said as undefined; empty under ten checks.</summary>
    public static string Figures(ObserverChecks checks) => checks.Agreement.Table.PairCount < EnoughPairCount ? "" : UnitWords.Say(
        "ObserversFigures", Number(checks.Agreement.Kappa), Number(checks.Agreement.Gwet));

    private static string Number(AgreementFigure figure) =>
        figure.ValueFraction is { } value ? value.ToString("0.00;−0.00;0.00", CultureInfo.CurrentCulture) : ReadingWords.Say("NotDefined");
}
