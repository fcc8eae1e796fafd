using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Predictions;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Foresight;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>What predictions are worth, as words: what they say first, then n, then the range.</summary>
public static class ForesightText
{
    private const double DotMm = 2.6;

    /// <summary>On which side the class lies of what was to be expected, with its range; without sets enough, that there are none yet.</summary>
    public static string Bias(ClassForesight foresight)
    {
        if (foresight.Luck is not { } luck) return ReadingWords.Say("BiasNone");
        var (low, high) = DotsOfTen.TenthsOf(foresight.LowOfEvenFraction, foresight.HighOfEvenFraction);
        return ReadingWords.Say("ClassBias" + foresight.Sign, low, high, luck.SetCount);
    }

    /// <summary>Optimism apart from luck, in tries of ten; empty without sets enough.</summary>
    public static string Luck(ClassForesight foresight)
    {
        if (foresight.Luck is not { } luck) return "";
        return ReadingWords.Say(Worded("Optimism", luck.OptimismFraction), OfTen(luck.OptimismFraction)) + " "
            + ReadingWords.Say(Worded("Luck", luck.LuckFraction), OfTen(luck.LuckFraction), OfTen(luck.UsualLuckFraction));
    }

    /// <summary>How good the predictions are beside always saying the class's usual share.</summary>
    public static string Skill(PredictionScores scores) => scores switch
    {
        { TrialCount: 0 } => ReadingWords.Say("SkillNothing"),
        { SkillFraction: not { } } => ReadingWords.Say("SkillNone"),
        { SkillFraction: >= ClassForesight.SkillFraction } => ReadingWords.Say("SkillBetter"),
        { SkillFraction: <= -ClassForesight.SkillFraction } => ReadingWords.Say("SkillWorse"),
        _ => ReadingWords.Say("SkillSame"),
    };

    /// <summary>The Brier score beside what it is to be compared with; empty without a prediction.</summary>
    public static string Brier(PredictionScores scores) => scores is { BrierFraction: { } brier, BaseRateFraction: { } rate }
        ? ReadingWords.Say("Brier", Number(brier), Number(rate * (1 - rate)), scores.SetCount, scores.TrialCount)
        : "";

    /// <summary>On which side a pupil's predictions lie.</summary>
    public static string Side(PupilForesight pupil) =>
        ReadingWords.Say(pupil.Bias.SetCount == 0 ? "PupilNotYet" : "Pupil" + pupil.Sign);

    /// <summary>What a pupil says where 5 of 10 is to be expected: a range in tenths.</summary>
    public static string Range(PupilForesight pupil)
    {
        var (low, high) = DotsOfTen.TenthsOf(pupil.LowOfEvenFraction, pupil.HighOfEvenFraction);
        return ReadingWords.Say(pupil.IsMostlyClass ? "SaysMostlyClass" : "Says", low, high);
    }

    /// <summary>What the pupil says, with that range, as ten dots.</summary>
    public static Scene Dots(PupilForesight pupil) =>
        DotsOfTen.Of(pupil.OfEvenFraction, pupil.LowOfEvenFraction, pupil.HighOfEvenFraction, DotMm, pupil.IsMostlyClass, "");

    /// <summary>How many sets stand behind it.</summary>
    public static string Sets(PupilForesight pupil) => ReadingWords.Say("SetsOfSets", pupil.Bias.SetCount, pupil.ComparedSetCount);

    /// <summary>Predicted less came, as the other pages say it; none where nothing was compared.</summary>
    public static string? Came(PredictionEvidence predictions) => EvidenceText.Of(predictions);

    // Less than half a try in ten is as good as none.
    private static string Worded(string key, double fraction) => key + (fraction >= .05 ? "More" : fraction <= -.05 ? "Fewer" : "Close");

    private static string OfTen(double fraction) => Math.Abs(fraction * 10).ToString("0.0", CultureInfo.CurrentCulture);

    private static string Number(double value) => value.ToString("0.00", CultureInfo.CurrentCulture);
}
