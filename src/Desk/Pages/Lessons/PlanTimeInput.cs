using System.Globalization;
using Slantwise.Records.Planning;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>A number that can be tried in a lesson's time and mats.</summary>
/// <param name="Name">Its name in the page's address.</param>
/// <param name="Label">The key of its words.</param>
/// <param name="Least">The least it may be.</param>
/// <param name="Most">The most it may be.</param>
/// <param name="IsWhole">Whether only whole numbers make sense.</param>
/// <param name="Chosen">What a choice says of it; none where it says nothing.</param>
/// <param name="Usual">What is planned without a choice.</param>
/// <param name="With">The choice with it.</param>
public sealed record PlanTimeInput(
    string Name, string Label, double Least, double Most, bool IsWhole, Func<PlanningChoice, double?> Chosen, Func<UsualPractice, double?> Usual,
    Func<PlanningChoice, double, PlanningChoice> With)
{
    /// <summary>All of them by topic, in the order of the page; the key of the topic's words first.</summary>
    public static IReadOnlyList<(string Topic, IReadOnlyList<PlanTimeInput> Inputs)> ByTopic { get; } =
    [
        ("PlanTimeMatsAndPupils",
        [
            Whole("mats", "Mats", 1, PlanningChoice.MostMats, c => c.MatCount, u => u.Plan.MatCount, (c, n) => c with { MatCount = n }),
            Whole("pupils-a-mat", "PlanTimePupilsAMat", 1, PlanningChoice.MostPupilsAMat, c => c.PupilsAMat, _ => null, (c, n) => c with { PupilsAMat = n }),
            Whole("performers", "PlanTimePerformers", 1, PlanningChoice.MostInARole, c => c.PerformersAMat, u => u.Plan.PerformersAMat, (c, n) => c with { PerformersAMat = n }),
            Whole("partners", "PlanTimePartners", 0, PlanningChoice.MostInARole, c => c.PartnersATurn, u => u.Plan.PartnersATurn, (c, n) => c with { PartnersATurn = n }),
            Whole("observers", "PlanTimeObservers", 0, PlanningChoice.MostInARole, c => c.ObserversATurn, u => u.Plan.ObserversATurn, (c, n) => c with { ObserversATurn = n }),
        ]),
        ("PlanTimeOneTry",
        [
            new("action", "PlanTimeAction", PlanningChoice.LeastActionS, PlanningChoice.MostS, false, c => c.ActionS, u => u.Plan.ActionS, (c, n) => c with { ActionS = n }),
            Time("rest", "PlanTimeRest", c => c.RestS, u => u.Plan.RestS, (c, n) => c with { RestS = n }),
            Time("record", "PlanTimeRecord", c => c.RecordS, u => u.Plan.RecordS, (c, n) => c with { RecordS = n }),
            Whole("in-a-row", "PlanTimeInARow", 1, PlanningChoice.MostTrialsATurn, c => c.TrialsATurn, u => u.Plan.TrialsATurn, (c, n) => c with { TrialsATurn = n }),
        ]),
        ("PlanTimeSets",
        [
            Whole("sets", "PlanTimeSetCount", 1, PlanningChoice.MostSets, c => c.SetCount, u => u.Plan.SetCount, (c, n) => c with { SetCount = n }),
            Whole("tries", "PlanTimeTries", 1, PlanningChoice.MostTrials, c => c.TrialCount, u => u.Plan.TrialsASet, (c, n) => c with { TrialCount = n }),
            Time("between", "PlanTimeBetween", c => c.BetweenSetsS, u => u.Plan.BetweenSetsS, (c, n) => c with { BetweenSetsS = n }),
        ]),
        ("PlanTimeTalkAndStations",
        [
            new("talk", "PlanTimeTalk", 0, PlanningChoice.MostTalkMin, false, c => c.TalkMin, u => u.TalkS / 60, (c, n) => c with { TalkMin = n }),
            Whole("stations", "PlanTimeStations", 0, PlanningChoice.MostSideStations, c => c.SideStationCount, u => u.Plan.SideStationCount, (c, n) => c with { SideStationCount = n }),
            Time("change", "PlanTimeChange", c => c.ChangeS, u => u.Plan.TransitionS, (c, n) => c with { ChangeS = n }),
        ]),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PlanTimeInput> All { get; } = [.. ByTopic.SelectMany(t => t.Inputs)];

    /// <summary>A number as an address and a number field say it.</summary>
    /// <param name="number">The number; none for an empty text.</param>
    public static string Text(double? number) => number is { } n ? Math.Round(n, 3).ToString(CultureInfo.InvariantCulture) : "";

    private static PlanTimeInput Whole(
        string name, string label, int least, int most, Func<PlanningChoice, int?> chosen, Func<UsualPractice, int?> usual, Func<PlanningChoice, int, PlanningChoice> with) =>
        new(name, label, least, most, true, c => chosen(c), u => usual(u), (c, n) => with(c, (int)n));

    private static PlanTimeInput Time(
        string name, string label, Func<PlanningChoice, double?> chosen, Func<UsualPractice, double?> usual, Func<PlanningChoice, double, PlanningChoice> with) =>
        new(name, label, 0, PlanningChoice.MostS, false, chosen, usual, with);
}
