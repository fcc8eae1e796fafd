using Slantwise.Engines.Planning.Practice;

namespace Slantwise.Records.Planning;

/// <summary>What somebody wants to try in a plan in place of what the lesson, its sheet and the usual say. A lesson may keep one.</summary>
public sealed record PlanningChoice
{
    /// <summary>Mats that can be tried at most.</summary>
    public const int MostMats = 100;

    /// <summary>Pupils a mat that can be tried at most.</summary>
    public const int MostPupilsAMat = 30;

    /// <summary>Performers on one mat, and partners and observers of one performer, at most.</summary>
    public const int MostInARole = 4;

    /// <summary>Sets that can be tried at most.</summary>
    public const int MostSets = 20;

    /// <summary>Tries a set that can be tried at most.</summary>
    public const int MostTrials = 50;

    /// <summary>Tries in a row that can be tried at most.</summary>
    public const int MostTrialsATurn = 20;

    /// <summary>Stations without mats that can be tried at most.</summary>
    public const int MostSideStations = 10;

    /// <summary>The longest rest, time to write, try, pause or change that can be tried.</summary>
    public const double MostS = 600;

    /// <summary>The shortest try.</summary>
    public const double LeastActionS = 0.5;

    /// <summary>The most talk that can be tried.</summary>
    public const double MostTalkMin = 120;

    /// <summary>Nothing else than the lesson says.</summary>
    public static PlanningChoice Usual { get; } = new();

    /// <summary>Mats, 1 to <see cref="MostMats"/>; none for those of the lesson.</summary>
    public int? MatCount { get; init; }

    /// <summary>Pupils who share a mat, 1 to <see cref="MostPupilsAMat"/>. Where given it says how many mats that takes, whatever <see cref="MatCount"/> is.</summary>
    public int? PupilsAMat { get; init; }

    /// <summary>How many perform at once on one mat, 1 to <see cref="MostInARole"/>; none for one.</summary>
    public int? PerformersAMat { get; init; }

    /// <summary>Partners who support or hold in a turn, 0 to <see cref="MostInARole"/>; none for nobody.</summary>
    public int? PartnersATurn { get; init; }

    /// <summary>Who watch one performer, 0 to <see cref="MostInARole"/>; none for nobody.</summary>
    public int? ObserversATurn { get; init; }

    /// <summary>The hold, or the time one try takes, <see cref="LeastActionS"/> to <see cref="MostS"/>; none for the mean over the sheet's levels.</summary>
    public double? ActionS { get; init; }

    /// <summary>Tries one after the other before the next pupil has the mat, 1 to <see cref="MostTrialsATurn"/>; none for one.</summary>
    public int? TrialsATurn { get; init; }

    /// <summary>Rest before the next try of one's own, 0 to <see cref="MostS"/>; none for the usual.</summary>
    public double? RestS { get; init; }

    /// <summary>Writing down, 0 to <see cref="MostS"/>; none for the usual.</summary>
    public double? RecordS { get; init; }

    /// <summary>Who writes down; none for the performer beside the mat.</summary>
    public Recording? RecordedBy { get; init; }

    /// <summary>Sets, 1 to <see cref="MostSets"/>, of all tasks together; none for those of the sheet.</summary>
    public int? SetCount { get; init; }

    /// <summary>Tries a set, 1 to <see cref="MostTrials"/>; none for those of the sheet.</summary>
    public int? TrialCount { get; init; }

    /// <summary>The pause of all between two sets, 0 to <see cref="MostS"/>; none for the usual.</summary>
    public double? BetweenSetsS { get; init; }

    /// <summary>Talk before practice ends, 0 to <see cref="MostTalkMin"/>, in place of what the phases say; practice gets what talk gives up, and gives what it takes.</summary>
    public double? TalkMin { get; init; }

    /// <summary>Stations without mats, 0 to <see cref="MostSideStations"/>, through which the class goes round as well; none for none.</summary>
    public int? SideStationCount { get; init; }

    /// <summary>One change of stations, 0 to <see cref="MostS"/>; none for the usual.</summary>
    public double? ChangeS { get; init; }

    /// <summary>The seed of the simulated lessons; none for the lesson's own.</summary>
    public ulong? Seed { get; init; }

    /// <summary>Whether everything lies within its range.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public bool IsWithin =>
        MatCount is null or (>= 1 and <= MostMats) && PupilsAMat is null or (>= 1 and <= MostPupilsAMat)
        && PerformersAMat is null or (>= 1 and <= MostInARole) && PartnersATurn is null or (>= 0 and <= MostInARole) && ObserversATurn is null or (>= 0 and <= MostInARole)
        && ActionS is null or (>= LeastActionS and <= MostS) && TrialsATurn is null or (>= 1 and <= MostTrialsATurn)
        && IsTime(RestS) && IsTime(RecordS) && IsTime(BetweenSetsS) && IsTime(ChangeS) && (RecordedBy is null || Enum.IsDefined(RecordedBy.Value))
        && SetCount is null or (>= 1 and <= MostSets) && TrialCount is null or (>= 1 and <= MostTrials)
        && TalkMin is null or (>= 0 and <= MostTalkMin) && SideStationCount is null or (>= 0 and <= MostSideStations);

    private static bool IsTime(double? timeS) => timeS is null or (>= 0 and <= MostS);
}
