using System.CommandLine;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Planning;

namespace Slantwise.Host.Commands;

/// <summary>The options of <c>plan</c> that try something in place of what a lesson says or keeps.</summary>
internal sealed class PlanFlags
{
    private static readonly Dictionary<string, Recording> Writers =
        new(StringComparer.Ordinal) { ["beside"] = Recording.PerformerBeside, ["on-mat"] = Recording.PerformerOnMat, ["observer"] = Recording.Observer };

    private readonly Option<int?> _mats = Whole("--mats", "OptionMats");
    private readonly Option<int?> _each = Whole("--pupils-a-mat", "OptionPupilsAMat");
    private readonly Option<int?> _performers = Whole("--performers", "OptionPerformers");
    private readonly Option<int?> _partners = Whole("--partners", "OptionPartners");
    private readonly Option<int?> _observers = Whole("--observers", "OptionObservers");
    private readonly Option<double?> _action = Time("--action", "OptionAction");
    private readonly Option<int?> _inARow = Whole("--in-a-row", "OptionInARow");
    private readonly Option<double?> _rest = Time("--rest", "OptionRest");
    private readonly Option<double?> _record = Time("--record", "OptionRecord");
    private readonly Option<string?> _writer = new("--writer") { Description = HostWords.Say("OptionWriter") };
    private readonly Option<int?> _sets = Whole("--sets", "OptionSets");
    private readonly Option<int?> _tries = Whole("--tries", "OptionTries");
    private readonly Option<double?> _between = Time("--between-sets", "OptionBetweenSets");
    private readonly Option<double?> _talk = new("--talk") { Description = HostWords.Say("OptionTalk"), HelpName = "MIN" };
    private readonly Option<int?> _stations = Whole("--stations", "OptionStations");
    private readonly Option<double?> _change = Time("--change", "OptionChange");
    private readonly Option<ulong?> _seed = new("--seed") { Description = HostWords.Say("OptionPlanSeed"), HelpName = "N" };
    private readonly Option<bool> _usual = new("--usual") { Description = HostWords.Say("OptionUsual") };

    public PlanFlags() => _writer.AcceptOnlyFromAmong([.. Writers.Keys]);

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in (Option[])
            [_mats, _each, _performers, _partners, _observers, _action, _inARow, _rest, _record, _writer, _sets, _tries, _between, _talk, _stations, _change, _seed, _usual]) command.Add(option);
    }

    /// <summary>What is tried; refused where a number lies outside its range.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="kept">What the lesson keeps; passed over where the usual is asked for.</param>
    public PlanningChoice Of(ParseResult parsed, PlanningChoice kept)
    {
        if (parsed.GetValue(_mats) is not null && parsed.GetValue(_each) is not null) throw Refusal.Of("PlanMatsTwice");
        var start = parsed.GetValue(_usual) ? PlanningChoice.Usual : kept;
        // Mats that are asked for stand against pupils a mat that are kept.
        if (parsed.GetValue(_mats) is not null) start = start with { PupilsAMat = null };
        var choice = start with
        {
            MatCount = parsed.GetValue(_mats) ?? start.MatCount,
            PupilsAMat = parsed.GetValue(_each) ?? start.PupilsAMat,
            PerformersAMat = parsed.GetValue(_performers) ?? start.PerformersAMat,
            PartnersATurn = parsed.GetValue(_partners) ?? start.PartnersATurn,
            ObserversATurn = parsed.GetValue(_observers) ?? start.ObserversATurn,
            ActionS = parsed.GetValue(_action) ?? start.ActionS,
            TrialsATurn = parsed.GetValue(_inARow) ?? start.TrialsATurn,
            RestS = parsed.GetValue(_rest) ?? start.RestS,
            RecordS = parsed.GetValue(_record) ?? start.RecordS,
            RecordedBy = parsed.GetValue(_writer) is { } writer ? Writers[writer] : start.RecordedBy,
            SetCount = parsed.GetValue(_sets) ?? start.SetCount,
            TrialCount = parsed.GetValue(_tries) ?? start.TrialCount,
            BetweenSetsS = parsed.GetValue(_between) ?? start.BetweenSetsS,
            TalkMin = parsed.GetValue(_talk) ?? start.TalkMin,
            SideStationCount = parsed.GetValue(_stations) ?? start.SideStationCount,
            ChangeS = parsed.GetValue(_change) ?? start.ChangeS,
            Seed = parsed.GetValue(_seed) ?? start.Seed,
        };
        if (choice is not { MatCount: null or (>= 1 and <= PlanningChoice.MostMats), PupilsAMat: null or (>= 1 and <= PlanningChoice.MostPupilsAMat) })
            throw Refusal.Of("PlanChoice", PlanningChoice.MostMats, PlanningChoice.MostPupilsAMat);
        return choice.IsWithin ? choice : throw Refusal.Of(
            "PlanChoiceOther", PlanningChoice.MostInARole, PlanningChoice.LeastActionS, PlanningChoice.MostS, PlanningChoice.MostTrialsATurn, PlanningChoice.MostSets,
            PlanningChoice.MostTrials, PlanningChoice.MostTalkMin, PlanningChoice.MostSideStations);
    }

    private static Option<int?> Whole(string name, string words) => new(name) { Description = HostWords.Say(words), HelpName = "N" };

    private static Option<double?> Time(string name, string words) => new(name) { Description = HostWords.Say(words), HelpName = "S" };
}
