using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Orders;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>What a class gained over a unit, as words: the class's, never one pupil's.</summary>
public static class GrowthText
{
    private const double DotMm = 2.6;

    /// <summary>What came of 5 in 10, with its range, or that it needs a second lesson.</summary>
    public static string Of(SharedGrowth? growth)
    {
        if (growth is null) return UnitWords.Say("GrowthNone");
        var (low, high) = DotsOfTen.TenthsOf(growth.LowOfEvenFraction, growth.HighOfEvenFraction);
        var middle = Math.Clamp((int)Math.Round(growth.MeanOfEvenFraction * 10), low, high);
        return UnitWords.Say("Growth" + (growth.LowOfEvenFraction > .5 ? "More" : growth.HighOfEvenFraction < .5 ? "Fewer" : "Unclear"), middle, low, high)
            + (growth.IsMostlyAssumed ? " " + UnitWords.Say("GrowthAssumed") : "");
    }

    /// <summary>What it rests on.</summary>
    public static string Count(SharedGrowth growth) => UnitWords.Say("GrowthCount", growth.LessonCount, growth.TrialCount, growth.ReturnedPupilCount);

    /// <summary>That range as ten dots.</summary>
    public static Scene Dots(SharedGrowth growth) => DotsOfTen.Of(
        Math.Clamp(growth.MeanOfEvenFraction, growth.LowOfEvenFraction, growth.HighOfEvenFraction), growth.LowOfEvenFraction, growth.HighOfEvenFraction, DotMm, growth.IsMostlyAssumed, "");

    /// <summary>The means lesson by lesson.</summary>
    /// <param name="growth">A level's times.</param>
    /// <param name="lessons">The lessons of the evidence.</param>
    public static IEnumerable<string> Means(HoldGrowth growth, IReadOnlyList<UnitLesson> lessons) => growth.Lessons.Select(l => UnitWords.SayCount(
        "MeanHold", l.PupilCount, HoldText.Seconds(l.MeanS), lessons[l.LessonNumber - 1].Date.ToString("d MMM", CultureInfo.CurrentCulture)));

    /// <summary>Pupils beside themselves.</summary>
    public static string Own(ClassGrowth own) => own switch
    {
        { PupilCount: < HoldGrowth.EnoughPupilCount } or { GrowthNats: not { } } => UnitWords.SayCount("OwnFew", own.PupilCount),
        { LowNats: { } low, HighNats: { } high } when Math.Exp(high - low) < 20 => UnitWords.SayCount("OwnGrowth", own.PupilCount, Times(own.GrowthNats.Value), Times(low), Times(high)),
        _ => UnitWords.SayCount("OwnNoRange", own.PupilCount, Times(own.GrowthNats.Value)),
    };

    /// <summary>The two power laws beside each other.</summary>
    public static string Curve(LearningCurve curve) => curve switch
    {
        { InSeconds: { } seconds, InLogs: { } logs } => UnitWords.Say("CurveBoth", Times(seconds.ExponentNats * Math.Log(2)), Times(logs.ExponentNats * Math.Log(2)), curve.PointCount),
        { InLogs: { } logs } => UnitWords.Say("CurveLogs", Times(logs.ExponentNats * Math.Log(2)), curve.PointCount),
        _ => UnitWords.Say("CurveNone"),
    };

    private static string Times(double nats) => Math.Exp(nats).ToString("0.00", CultureInfo.CurrentCulture);
}
