using System.Globalization;

namespace Slantwise.Records.Planning;

/// <summary>A lesson's time and mats in three short lines, as they stand on the printed lesson page.</summary>
/// <param name="Tries">Tries for each.</param>
/// <param name="Waiting">How much of the time a pupil only waits.</param>
/// <param name="LastDone">When the last one has finished.</param>
public sealed record PlanningBrief(string Tries, string Waiting, string LastDone)
{
    /// <summary>The lines.</summary>
    public IReadOnlyList<string> Lines => [Tries, Waiting, LastDone];

    /// <summary>Reads a planning.</summary>
    /// <param name="planning">The planning.</param>
    /// <param name="culture">The reader's language.</param>
    public static PlanningBrief Of(LessonPlanning planning, CultureInfo culture)
    {
        var (plan, outlook, ranges) = (planning.Plan, planning.Outlook, planning.Ranges);
        string Say(string key, params object[] gaps) => PlanningWords.Text(key, culture, gaps);
        string Range(double low, double high) => Say(low == high ? "RangeOne" : "Range", low, high);
        static double Percent(double fraction) => Math.Round(100 * fraction);
        static double Minutes(double timeS) => Math.Ceiling(timeS / 60 - 1e-9);
        if (plan.AtMatsS <= 0) return new(Say("BriefTriesNone", plan.PlannedTrials), Say("WaitingUnknown"), Say("LastDoneUnknown"));
        return new(
            Say("BriefTries", plan.PlannedTrials, Range(ranges.FewestTrials.Low, ranges.FewestTrials.High)),
            Say("BriefWaiting", Percent(outlook.WaitingFraction), Range(Percent(ranges.WaitingFraction.LowFraction), Percent(ranges.WaitingFraction.HighFraction))),
            Say(
                outlook.LeftS < 0 ? "BriefLate" : "BriefLastDone", Minutes(planning.LastDoneS), Range(Minutes(planning.LastDoneRange.LowS), Minutes(planning.LastDoneRange.HighS)),
                Minutes(planning.EndS)));
    }
}
