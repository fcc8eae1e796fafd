using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Records.Evidence.SelfChecks;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Self-checks beside the teacher's as words: what they say first, then n, then the range.</summary>
public static class SelfCheckText
{
    /// <summary>Whether too little was checked by both for more than the counts.</summary>
    public static bool IsFew(CheckedCue cue) => cue.Agreement.Table.PairCount < 10;

    /// <summary>All cues in a sentence.</summary>
    public static string Whole(CheckedCue whole) => ReadingWords.Say(
        "SelfChecksWhole", whole.Agreement.Table.AgreedCount, whole.Agreement.Table.PairCount, whole.Agreement.PupilCount, Lean(whole), whole.BlindCount);

    /// <summary>How many checks came out the same.</summary>
    public static string Same(CheckedCue cue) => ReadingWords.Say("SameOf", cue.Agreement.Table.AgreedCount, cue.Agreement.Table.PairCount);

    /// <summary>Where the share likely lies; for few checks, that there are few.</summary>
    public static string SameRange(CheckedCue cue)
    {
        if (IsFew(cue) || cue.Agreement.AgreedRange is not { } range) return ReadingWords.Say("FewChecks");
        var (low, high) = DotsOfTen.TenthsOf(range.LowFraction, range.HighFraction);
        return EvidenceWords.Say("LikelyTenths", low, high);
    }

    /// <summary>Whether pupils tick more or less than the teacher sees, as far as the checks can tell.</summary>
    public static string Lean(CheckedCue cue) => ReadingWords.Say(cue.Agreement.Balance switch
    {
        { ChanceFraction: <= ClassSelfChecks.LeanChanceFraction, BiasFraction: > 0 } => "LeanOver",
        { ChanceFraction: <= ClassSelfChecks.LeanChanceFraction, BiasFraction: < 0 } => "LeanUnder",
        _ => "LeanUnclear",
    });

    /// <summary>How often only one of the two saw the cue met.</summary>
    public static string LeanCounts(CheckedCue cue) => ReadingWords.Say("LeanCounts", cue.Agreement.Balance.OverCount, cue.Agreement.Balance.UnderCount);

    /// <summary>Kappa, or why there is none.</summary>
    public static string Kappa(CheckedCue cue) => Figure(cue, cue.Agreement.Kappa);

    /// <summary>Kappa's range over pupils, or why there is none.</summary>
    public static string KappaRange(CheckedCue cue) => Range(cue, cue.Agreement.KappaOverPupils);

    /// <summary>AC1, or why there is none.</summary>
    public static string Gwet(CheckedCue cue) => Figure(cue, cue.Agreement.Gwet);

    /// <summary>AC1's range over pupils, or why there is none.</summary>
    public static string GwetRange(CheckedCue cue) => Range(cue, cue.Agreement.GwetOverPupils);

    private static string Figure(CheckedCue cue, AgreementFigure figure) =>
        figure.ValueFraction is not { } value ? ReadingWords.Say("NotDefined") : IsFew(cue) ? "–" : Number(value);

    private static string Range(CheckedCue cue, JackknifedFigure figure)
    {
        if (figure.ValueFraction is null || IsFew(cue)) return "";
        if (figure.Cautions.HasFlag(AgreementCautions.HangsOnOnePupil)) return ReadingWords.Say("HangsOnOne");
        if (figure.Cautions.HasFlag(AgreementCautions.FewPupils) || figure is not { LowFraction: { } low, HighFraction: { } high }) return ReadingWords.SayCount("FewPupils", figure.PupilCount);
        var range = ReadingWords.Say("FromTo", Number(low), Number(high));
        return cue.Agreement.Cautions.HasFlag(AgreementCautions.MostlyOneCategory) ? ReadingWords.Say("MostlyOne", range) : range;
    }

    private static string Number(double value) => value.ToString("0.00;−0.00;0.00", CultureInfo.CurrentCulture);
}
