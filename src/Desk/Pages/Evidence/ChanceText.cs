using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Foresight;
using Slantwise.Records.Evidence.Levels;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Chances as tries of ten, in words and as dots: what they say first, then the range.</summary>
public static class ChanceText
{
    private const double DotMm = 2.6;

    /// <summary>What is expected of ten tries, with its range; that there are not enough tries yet where the range says too little.</summary>
    /// <param name="chance">The chance; none where the model has none.</param>
    public static string Of(LevelChance? chance)
    {
        if (chance is null) return ChanceWords.Say("NothingKnown");
        if (chance.IsTooWide) return ChanceWords.Say("NotEnough");
        var (about, low, high) = TenthsOf(chance.ChanceFraction, chance.LowFraction, chance.HighFraction);
        return ChanceWords.Say("ChanceSays", about, low, high);
    }

    /// <summary>The same of the middle of the class, as a sentence.</summary>
    /// <param name="chance">The chance in the middle of the class.</param>
    public static string OfMiddle(LevelChance? chance)
    {
        if (chance is null or { IsTooWide: true }) return ChanceWords.Say("MiddleTooWide");
        var (about, low, high) = TenthsOf(chance.ChanceFraction, chance.LowFraction, chance.HighFraction);
        return ChanceWords.Say(chance.IsMostlyAssumed ? "MiddleSaysAssumed" : "MiddleSays", about, low, high);
    }

    /// <summary>Whether it is to be shown muted: too little to read, or more assumed than seen.</summary>
    /// <param name="chance">The chance; none where the model has none.</param>
    public static bool IsMuted(LevelChance? chance) => chance is null or { IsTooWide: true } or { IsMostlyAssumed: true };

    /// <summary>The chance as ten dots.</summary>
    /// <param name="chance">A chance that is not too wide to read.</param>
    /// <param name="description">What it shows; empty where words beside it say the same.</param>
    public static Scene Dots(LevelChance chance, string description = "") =>
        DotsOfTen.Of(chance.ChanceFraction, chance.LowFraction, chance.HighFraction, DotMm, chance.IsMostlyAssumed, description);

    /// <summary>How a level compares with another.</summary>
    /// <param name="difference">The difference; none where the model cannot say.</param>
    public static string Of(LevelDifference? difference)
    {
        if (difference is null || IsTooWide(difference)) return ChanceWords.Say("SideTooWide");
        var (about, low, high) = TenthsOf(difference.OfEvenFraction, difference.LowOfEvenFraction, difference.HighOfEvenFraction);
        // Rounded outwards a range may end at 5, though an even chance lies outside of it: then it must not read as if it were inside.
        var isNear = difference.Side == LevelSide.Harder && high >= 5 || difference.Side == LevelSide.Easier && low <= 5;
        return ChanceWords.Say("Side" + difference.Side + (isNear ? "Near" : ""), about, low, high);
    }

    /// <summary>Why a difference is not to be built on; empty where nothing is to mind.</summary>
    /// <param name="difference">The difference; none where the model cannot say.</param>
    public static string Mind(LevelDifference? difference) => difference switch
    {
        null => "",
        { IsLinked: false } => ChanceWords.Say("Unlinked"),
        { IsMostlyAssumed: true } => ChanceWords.Say("MostlyAssumed"),
        _ => "",
    };

    /// <summary>For how many of a class a level is likely within reach.</summary>
    /// <param name="band">The band of the level; none before any try.</param>
    public static string Of(LevelBand? band) => band is null
        ? ChanceWords.Say("BandNone")
        : ChanceWords.Say("BandSays", Math.Clamp((int)Math.Round(band.PupilCount), band.LeastCount, band.MostCount), band.OfferedCount);

    /// <summary>The range of that number, and what within reach means.</summary>
    /// <param name="band">The band of the level.</param>
    public static string Range(LevelBand band) => ChanceWords.Say(
        "BandRange", band.LeastCount, band.MostCount, Math.Round(band.Band.LowFraction * 100), Math.Round(band.Band.HighFraction * 100));

    /// <summary>A level as the heading of its page.</summary>
    /// <param name="level">The level.</param>
    public static string Title(LevelEvidence level) => level is { LevelNumber: { } number, Dose: { } dose }
        ? ChanceWords.Say("LevelTitle", number, level.Name, EvidenceText.Of(dose))
        : ChanceWords.Say("LevelTitleOff");

    /// <summary>What decisions followed.</summary>
    /// <param name="decisions">The decisions.</param>
    public static string Of(LevelDecisions decisions) => decisions.DecidedCount == 0
        ? ChanceWords.Say("NothingDecided")
        : ChanceWords.Say("DecidedCounts", decisions.EasierCount, decisions.SameCount, decisions.HarderCount);

    /// <summary>What a pupil's predictions say beside what was to be expected.</summary>
    /// <param name="pupil">The pupil's foresight.</param>
    public static string Predicts(PupilForesight pupil)
    {
        if (pupil.IsMostlyClass) return ChanceWords.Say("PredictsMostlyClass");
        var (low, high) = DotsOfTen.TenthsOf(pupil.LowOfEvenFraction, pupil.HighOfEvenFraction);
        return ChanceWords.Say("Predicts" + pupil.Sign, low, high);
    }

    internal static string OfTen(double fraction) => (fraction * 10).ToString("0.#", CultureInfo.CurrentCulture);

    // Where the range says too little of a pupil, it says too little of a difference.
    private static bool IsTooWide(LevelDifference difference) => difference.HighOfEvenFraction - difference.LowOfEvenFraction > LevelChance.WidestFraction;

    private static (int About, int Low, int High) TenthsOf(double about, double low, double high)
    {
        var (from, to) = DotsOfTen.TenthsOf(low, high);
        return (DotsOfTen.AboutOf(about, low, high), from, to);
    }
}
