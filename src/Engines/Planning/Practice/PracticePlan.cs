namespace Slantwise.Engines.Planning.Practice;

/// <summary>What is planned for a lesson's practice on mats. All times are means; "turn" is what one pupil does before the next has the mat.</summary>
public sealed record PracticePlan
{
    /// <summary>Pupils who practise, 1 to 200.</summary>
    public required int PupilCount { get; init; }

    /// <summary>Mats, 1 to 100.</summary>
    public required int MatCount { get; init; }

    /// <summary>Who practises on which mat.</summary>
    public MatUse Use { get; init; } = MatUse.OwnGroups;

    /// <summary>How many perform at once on one mat, 1 to 4.</summary>
    public int PerformersAMat { get; init; } = 1;

    /// <summary>The lesson, or the part of it that is looked at: above 0, at most 4 hours.</summary>
    public required double LessonS { get; init; }

    /// <summary>Talk and demonstration in which nobody practises, 0 or more.</summary>
    public double TalkS { get; init; }

    /// <summary>Stations without mats through which the class rotates as well, 0 to 10.</summary>
    public int SideStationCount { get; init; }

    /// <summary>One change of stations, 0 or more.</summary>
    public double TransitionS { get; init; }

    /// <summary>Sets, 1 to 20; a pupil decides anew before each.</summary>
    public int SetCount { get; init; } = 1;

    /// <summary>Trials planned in a set, 1 to 50.</summary>
    public int TrialsASet { get; init; } = 1;

    /// <summary>The pause of all between two sets, 0 or more: reading the sheet, deciding, a word.</summary>
    public double BetweenSetsS { get; init; }

    /// <summary>Trials one after the other before the next pupil has the mat, 1 to 20.</summary>
    public int TrialsATurn { get; init; } = 1;

    /// <summary>The hold, or the time the action of one trial takes: above 0.</summary>
    public required double ActionS { get; init; }

    /// <summary>Stepping on and getting ready, once a turn, 0 or more.</summary>
    public double EnterS { get; init; }

    /// <summary>Coming out of it and stepping off, once a turn, 0 or more.</summary>
    public double LeaveS { get; init; }

    /// <summary>Getting ready again between two trials of one turn, 0 or more.</summary>
    public double AgainS { get; init; }

    /// <summary>Rest needed after a turn before one's own next, 0 or more. Others have the mat meanwhile.</summary>
    public double RestS { get; init; }

    /// <summary>Writing down a turn, 0 or more.</summary>
    public double RecordS { get; init; }

    /// <summary>Who writes it down.</summary>
    public Recording RecordedBy { get; init; } = Recording.PerformerBeside;

    /// <summary>Partners who support or hold in a turn, 0 to 4.</summary>
    public int PartnersATurn { get; init; }

    /// <summary>Who watch one performer and look for cues, 0 to 4.</summary>
    public int ObserversATurn { get; init; }

    /// <summary>Groups of pupils: stations take turns, so that only one group in so many is at the mats at a time.</summary>
    public int RoundCount => 1 + SideStationCount;

    /// <summary>Pupils at the mats at a time; the largest part where they do not divide evenly.</summary>
    public int PupilsAtMats => (PupilCount + RoundCount - 1) / RoundCount;

    /// <summary>How long a turn keeps the mat.</summary>
    public double TurnS => EnterS + TrialsATurn * ActionS + (TrialsATurn - 1) * AgainS + LeaveS + (RecordedBy == Recording.PerformerOnMat ? RecordS : 0);

    /// <summary>How long a pupil is away from the queue after a turn: rest, and writing beside the mat; whoever writes rests, too.</summary>
    public double AwayS => RecordedBy == Recording.PerformerBeside ? Math.Max(RestS, RecordS) : RestS;

    /// <summary>The time in which mats are used, all rounds together: the lesson less talk, changes of stations and pauses. Below 0 where these alone are longer.</summary>
    public double PracticeS => LessonS - TalkS - SideStationCount * TransitionS - (SetCount - 1) * BetweenSetsS;

    /// <summary>The time one pupil has at the mats.</summary>
    public double AtMatsS => PracticeS / RoundCount;

    /// <summary>Trials planned for each.</summary>
    public int PlannedTrials => SetCount * TrialsASet;

    /// <summary>Turns that the planned trials take; the last of them may be shorter.</summary>
    public int PlannedTurns => (PlannedTrials + TrialsATurn - 1) / TrialsATurn;

    /// <summary>The queues at the mats: how many pupils share how many places.</summary>
    internal IEnumerable<(int Pupils, int Places)> Queues()
    {
        if (Use == MatUse.OneQueue)
        {
            yield return (PupilsAtMats, MatCount * PerformersAMat);
            yield break;
        }
        var mats = Math.Min(MatCount, PupilsAtMats);
        for (var m = 0; m < mats; m++) yield return ((PupilsAtMats + mats - 1 - m) / mats, PerformersAMat);
    }

    /// <summary>Throws where something is outside its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A count or a time outside the range its property names.</exception>
    internal void Check()
    {
        Within(PupilCount, 1, 200, nameof(PupilCount));
        Within(MatCount, 1, 100, nameof(MatCount));
        Within(PerformersAMat, 1, 4, nameof(PerformersAMat));
        Within(SideStationCount, 0, 10, nameof(SideStationCount));
        Within(SetCount, 1, 20, nameof(SetCount));
        Within(TrialsASet, 1, 50, nameof(TrialsASet));
        Within(TrialsATurn, 1, 20, nameof(TrialsATurn));
        Within(PartnersATurn, 0, 4, nameof(PartnersATurn));
        Within(ObserversATurn, 0, 4, nameof(ObserversATurn));
        foreach (var (timeS, name) in new[]
        {
            (TalkS, nameof(TalkS)), (TransitionS, nameof(TransitionS)), (BetweenSetsS, nameof(BetweenSetsS)), (EnterS, nameof(EnterS)),
            (LeaveS, nameof(LeaveS)), (AgainS, nameof(AgainS)), (RestS, nameof(RestS)), (RecordS, nameof(RecordS)),
        })
        {
            if (!(timeS is >= 0 and <= MostS)) throw new ArgumentOutOfRangeException(name, timeS, "A time is 0 seconds to 4 hours.");
        }
        if (!(ActionS is > 0 and <= MostS)) throw new ArgumentOutOfRangeException(nameof(ActionS), ActionS, "An action takes more than 0 seconds and at most 4 hours.");
        if (!(LessonS is > 0 and <= MostS)) throw new ArgumentOutOfRangeException(nameof(LessonS), LessonS, "A lesson takes more than 0 seconds and at most 4 hours.");
    }

    private const double MostS = 4 * 3600;

    private static void Within(int value, int least, int most, string name)
    {
        if (value < least || value > most) throw new ArgumentOutOfRangeException(name, value, $"{name} is {least} to {most}.");
    }
}
