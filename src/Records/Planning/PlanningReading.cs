using System.Globalization;
using Slantwise.Engines.Planning.Blocks;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Engines.Planning.Practice.Changes;

namespace Slantwise.Records.Planning;

/// <summary>A lesson's time and mats in sentences: numbers with their ranges, and no verdict.</summary>
/// <param name="Tries">Tries for each.</param>
/// <param name="Waiting">How much of the time a pupil only waits.</param>
/// <param name="LastDone">When the last one has finished.</param>
/// <param name="More">What would give each two tries more.</param>
/// <param name="Warnings">What to know before relying on it.</param>
/// <param name="Changes">Every change that was found, with what it gives and costs; in no order of merit.</param>
/// <param name="Talk">What becomes of practice when talk takes longer.</param>
/// <param name="Shares">Where the lesson's time goes.</param>
/// <param name="Grounds">What was assumed.</param>
public sealed record PlanningReading(
    string Tries, string Waiting, string LastDone, string More, IReadOnlyList<PlanningNote> Warnings, IReadOnlyList<string> Changes, string Talk,
    IReadOnlyList<PlanningShare> Shares, IReadOnlyList<string> Grounds)
{
    /// <summary>The answer in four lines.</summary>
    public IReadOnlyList<string> Answers => [Tries, Waiting, LastDone, More];

    /// <summary>Reads a planning.</summary>
    /// <param name="planning">The planning.</param>
    /// <param name="culture">The reader's language.</param>
    public static PlanningReading Of(LessonPlanning planning, CultureInfo culture)
    {
        var (plan, outlook, ranges) = (planning.Plan, planning.Outlook, planning.Ranges);
        string Say(string key, params object[] gaps) => PlanningWords.Text(key, culture, gaps);
        string Range(double low, double high, string unit = "") => Say(low == high ? "RangeOne" : "Range", low, high) + unit;

        var room = Range(outlook.FewestTrials, outlook.MostTrials);
        var fewest = Range(ranges.FewestTrials.Low, ranges.FewestTrials.High);
        var waiting = Range(Percent(ranges.WaitingFraction.LowFraction), Percent(ranges.WaitingFraction.HighFraction));
        var done = Range(Minutes(planning.LastDoneRange.LowS), Minutes(planning.LastDoneRange.HighS));
        return new(
            Say("Tries", plan.PlannedTrials, room, fewest, ranges.RunCount),
            plan.AtMatsS > 0
                ? Say("Waiting", Percent(outlook.WaitingFraction), waiting, ranges.RunCount, Percent(outlook.PerformingFraction), Percent(outlook.RestingFraction + outlook.RoleFraction))
                : Say("WaitingUnknown"),
            Say(plan.AtMatsS <= 0 ? "LastDoneUnknown" : outlook.LeftS < 0 ? "LastDoneLate" : "LastDone", plan.PlannedTrials, Minutes(planning.LastDoneS), done, Minutes(planning.EndS), ranges.InTimeRuns, ranges.RunCount),
            MoreOf(planning, culture),
            [.. planning.Warnings.Select(w => new PlanningNote(w, Say("Warning" + w, GapsOf(w, planning))))],
            [.. planning.More.Single.Concat(planning.More.Pairs).Select(c => ChangeLine(planning, c, culture))],
            TalkOf(planning, culture),
            [.. planning.Blocks.Shares.Select(s => ShareOf(s, culture))],
            GroundsOf(planning, culture));
    }

    /// <summary>A change in a few words.</summary>
    /// <param name="planning">What is changed.</param>
    /// <param name="change">The change.</param>
    /// <param name="culture">The reader's language.</param>
    public static string NameOf(LessonPlanning planning, PlanChange change, CultureInfo culture)
    {
        var (before, after) = (planning.Plan, change.Plan);
        var parts = new List<string>();
        if (change.AddedMats > 0) parts.Add(PlanningWords.Text("ChangeMats", culture, after.MatCount, before.MatCount));
        if (change.AddedSideStations > 0) parts.Add(PlanningWords.TextCount("ChangeStations", culture, change.AddedSideStations));
        if (change.IsObserverNew) parts.Add(PlanningWords.Text("ChangeObserver", culture));
        if (change.AddedTrialsATurn > 0) parts.Add(PlanningWords.Text("ChangeInARow", culture, after.TrialsATurn, before.TrialsATurn));
        if (change.CutSets > 0) parts.Add(PlanningWords.TextCount("ChangeSets", culture, after.SetCount, after.TrialsASet, before.SetCount, before.TrialsASet));
        if (change.CutTalkS > 0) parts.Add(PlanningWords.Text("ChangeTalk", culture, change.CutTalkS / 60));
        return string.Join(PlanningWords.Text("And", culture), parts);
    }

    private static IReadOnlyList<string> GroundsOf(LessonPlanning planning, CultureInfo culture)
    {
        var plan = planning.Plan;
        string Say(string key, params object[] gaps) => PlanningWords.Text(key, culture, gaps);
        var byLevels = planning.Choice.ActionS is null ? "GroundsPlan" : "GroundsPlanTried";
        List<string> grounds = [Say(byLevels, plan.PupilCount, plan.MatCount, planning.PupilsAMat, plan.SetCount, plan.TrialsASet, plan.ActionS)];
        if (plan.PerformersAMat > 1 || plan.PartnersATurn + plan.ObserversATurn > 0) grounds.Add(Say("GroundsRoles", plan.PerformersAMat, plan.PartnersATurn, plan.ObserversATurn));
        if (plan.TrialsATurn > 1) grounds.Add(Say("GroundsInARow", plan.TrialsATurn, plan.AgainS));
        grounds.Add(Say("GroundsTimes", plan.EnterS, plan.LeaveS, plan.RestS, plan.RecordS, Say("Recorded" + plan.RecordedBy), plan.BetweenSetsS));
        if (plan.SideStationCount > 0) grounds.Add(PlanningWords.TextCount("GroundsStations", culture, plan.SideStationCount, plan.RoundCount, plan.PupilsAtMats, plan.TransitionS));
        if (planning.Choice.TalkMin is not null) grounds.Add(Say("GroundsTalk", planning.TalkS / 60));
        grounds.Add(Say("GroundsRules"));
        grounds.Add(Say("GroundsRuns", planning.Ranges.RunCount, planning.Seed, TimeSpread.Usual.TurnSd, TimeSpread.Usual.PupilSd));
        return grounds;
    }

    private static string MoreOf(LessonPlanning planning, CultureInfo culture)
    {
        var asked = PlanningDefaults.MoreTrials;
        var alone = planning.More.Single.Where(c => c.GainTrials >= asked).ToList();
        var found = alone.Count > 0 ? alone : [.. planning.More.Pairs];
        if (found.Count == 0) return PlanningWords.Text("MoreNone", culture, asked);
        return PlanningWords.Text(alone.Count > 0 ? "MoreAlone" : "MoreTogether", culture, asked, string.Join("; ", found.Select(c => NameOf(planning, c, culture))));
    }

    private static string ChangeLine(LessonPlanning planning, PlanChange change, CultureInfo culture)
    {
        string Say(string key, params object[] gaps) => PlanningWords.Text(key, culture, gaps);
        var line = Say(
            "Change", NameOf(planning, change, culture), change.Outlook.FewestTrials, planning.Outlook.FewestTrials, Percent(change.Outlook.WaitingFraction),
            Percent(planning.Outlook.WaitingFraction));
        if (change.CutSets > 0) line += PlanningWords.TextCount("CostSets", culture, change.CutSets);
        if (change.AddedSideStations > 0) line += Say("CostStations");
        if (change.AddedTrialsATurn > 0) line += Say("CostInARow");
        return line;
    }

    private static string TalkOf(LessonPlanning planning, CultureInfo culture)
    {
        var blocks = planning.Blocks;
        var talkS = blocks.Blocks.Where(b => b.Category == TimeCategory.Instruction).Sum(b => b.EndS - b.StartS);
        if (talkS == 0) return PlanningWords.Text("TalkNone", culture);
        var talk = PlanningWords.Text("Talk", culture, talkS / 60, blocks.OverrunS / 60, blocks.OverrunActivityS / 60, blocks.ActivityS / 60);
        var leftS = planning.Outlook.LeftS;
        return planning.TalkS > 0 && leftS >= 0 && planning.Plan.AtMatsS > 0 ? talk + PlanningWords.Text("TalkRoom", culture, planning.TalkS / 60, Math.Floor(leftS / 60)) : talk;
    }

    private static PlanningShare ShareOf(CategoryShare share, CultureInfo culture) => new(
        share.Category, PlanningWords.Text("Category" + share.Category, culture),
        PlanningWords.Text("ShareTime", culture, share.TimeS / 60, Percent(share.ShareFraction)),
        share.Orientation is { } value ? PlanningWords.Text("Orientation" + share.Category, culture, Percent(value.LowFraction), Percent(value.HighFraction), value.Source) : "");

    private static object[] GapsOf(PlanningWarning warning, LessonPlanning planning)
    {
        var plan = planning.Plan;
        return warning switch
        {
            PlanningWarning.NoMatsPlanned => [plan.MatCount],
            PlanningWarning.NoPhasesPlanned => [planning.Blocks.PlannedS / 60, (plan.LessonS - plan.TalkS) / 60],
            PlanningWarning.NoSheet => [plan.SetCount, plan.TrialsASet, plan.ActionS],
            PlanningWarning.MoreMatsThanPlanned => [plan.MatCount, planning.PlannedMats ?? 0],
            PlanningWarning.LastAfterEnd => [Math.Ceiling(-planning.Outlook.LeftS / 60)],
            PlanningWarning.TalkOverruns => [planning.TalkS / 60, planning.TalkS / 60 * PlanningDefaults.TalkOverrunFraction, planning.Outlook.LeftS / 60],
            PlanningWarning.EmptyMats => [plan.MatCount, plan.PupilsAtMats],
            PlanningWarning.EmptyPlaces => [plan.PerformersAMat],
            PlanningWarning.TooFewForRoles => [1 + plan.PartnersATurn + plan.ObserversATurn],
            _ => [],
        };
    }

    private static double Percent(double fraction) => Math.Round(100 * fraction);

    // The minute in which it is over.
    private static double Minutes(double timeS) => Math.Ceiling(timeS / 60 - 1e-9);
}
