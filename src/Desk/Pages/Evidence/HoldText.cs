using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Holds;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.HoldCurves;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>How long holds last, as words and as a chart.</summary>
public static class HoldText
{
    private const double WidthMm = 100;

    /// <summary>How long half of the holds lasted, or why that cannot be said.</summary>
    public static string Median(LevelHolds holds)
    {
        if (holds.TimedCount < LevelHolds.EnoughHoldCount) return ReadingWords.Say("NotEnoughTimed");
        if (holds.UntimedFallCount > 0 && !holds.HasCurve) return ReadingWords.SayCount("UntimedFalls", holds.UntimedFallCount);
        if (holds.Curve.FallenCount == 0) return ReadingWords.Say("NobodyFell", Seconds(holds.DoseS));
        return holds.Curve.Median switch
        {
            { MedianS: { } median, LowS: { } low, HighS: { } high } => ReadingWords.Say("HalfHeld", Seconds(median), Seconds(low), Seconds(high)),
            { MedianS: { } median, LowS: { } low } => ReadingWords.Say("HalfHeldFrom", Seconds(median), Seconds(low)),
            { MedianS: { } median } => ReadingWords.Say("HalfHeldAbout", Seconds(median)),
            _ => ReadingWords.Say("MoreThanHalf", Seconds(holds.Curve.Steps[^1].TimeS)),
        };
    }

    /// <summary>What it rests on.</summary>
    public static string Count(LevelHolds holds) => ReadingWords.SayCount("HoldCount", holds.Curve.PupilCount, holds.TimedCount, holds.UntimedFallCount);

    /// <summary>How many tries got into the position at all.</summary>
    public static string Start(LevelHolds holds) => ReadingWords.Say("Started", holds.Start.StartedCount, holds.Start.TriedCount);

    /// <summary>The curve's steps.</summary>
    /// <param name="holds">Holds with a curve.</param>
    /// <param name="name">What the level is called.</param>
    public static Scene Steps(LevelHolds holds, string name)
    {
        var endS = holds.Curve.Steps[^1].TimeS;
        return HeldSteps.Of(
            [.. holds.Curve.Steps.Select(s => new HeldStep(s.TimeS, s.HeldFraction, s.LowFraction, s.HighFraction, s.IsThin))],
            WidthMm,
            new(EvidenceWords.Say("AxisNone"), EvidenceWords.Say("AxisHalf"), EvidenceWords.Say("AxisAll")),
            new(Seconds(0), Seconds(endS / 2), Seconds(endS)),
            ReadingWords.Say("HoldsShow", name, Median(holds)));
    }

    /// <summary>The share still held after a step.</summary>
    public static string Share(SurvivalStep step) => ReadingWords.Say("OfTen", (step.HeldFraction * 10).ToString("0.0", CultureInfo.CurrentCulture));

    /// <summary>Its range; empty where there is none.</summary>
    public static string Range(SurvivalStep step)
    {
        if (step is not { LowFraction: { } low, HighFraction: { } high }) return "";
        var (from, to) = DotsOfTen.TenthsOf(low, high);
        return EvidenceWords.Say("LikelyTenths", from, to);
    }

    /// <summary>A time with its unit.</summary>
    public static string Seconds(double timeS) => EvidenceWords.Say("Held", timeS.ToString("0.#", CultureInfo.CurrentCulture));
}
