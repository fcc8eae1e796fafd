using Slantwise.Records.Lessons;

namespace Slantwise.Records.Planning;

/// <summary>What is assumed where a lesson does not say. Working rules without a source: a stopwatch in one's own class is better than any of them.</summary>
public static class PlanningDefaults
{
    /// <summary>Stepping on a mat and getting ready.</summary>
    public const double EnterS = 5;

    /// <summary>Coming out of it and stepping off.</summary>
    public const double LeaveS = 5;

    /// <summary>Getting ready again, where several tries are taken in a row.</summary>
    public const double AgainS = 5;

    /// <summary>Rest before one's own next try.</summary>
    public const double RestS = 10;

    /// <summary>Writing a try down, beside the mat.</summary>
    public const double RecordS = 10;

    /// <summary>Between two sets: looking at the sheet, choosing a level, saying beforehand what will come off.</summary>
    public const double BetweenSetsS = 60;

    /// <summary>One change of stations, where there are any.</summary>
    public const double ChangeS = 60;

    /// <summary>One repetition of several: a jump of the rope, a bounce.</summary>
    public const double RepetitionS = 1.5;

    /// <summary>One throw or jump at a distance, a height or a target, with fetching or walking back.</summary>
    public const double ThrowS = 8;

    /// <summary>One try where no sheet says how long it takes.</summary>
    public const double ActionS = 10;

    /// <summary>By what share of itself talk is tried to overrun: a quarter.</summary>
    public const double TalkOverrunFraction = 0.25;

    /// <summary>What may be cut of the talk at most, looking for more tries: half.</summary>
    public const double TalkCutFraction = 0.5;

    /// <summary>Pupils a mat where no mats are planned.</summary>
    public const int PupilsAMat = 2;

    /// <summary>Sets where there is no sheet.</summary>
    public const int SetCount = 3;

    /// <summary>Tries a set where there is no sheet.</summary>
    public const int TrialCount = 5;

    /// <summary>Stations without mats that are tried at most.</summary>
    public const int MostSideStations = 3;

    /// <summary>Tries in a row that are tried at most.</summary>
    public const int MostTrialsATurn = 5;

    /// <summary>Simulated lessons.</summary>
    public const int RunCount = 400;

    /// <summary>Tries more for which changes are looked for.</summary>
    public const int MoreTrials = 2;

    /// <summary>The blocks of a lesson that has none: 45 minutes, 25 of them at the mats.</summary>
    public static IReadOnlyList<LessonPhase> Phases { get; } =
        [new(PhaseKind.Management, 5, ""), new(PhaseKind.Instruction, 8, ""), new(PhaseKind.Activity, 25, ""), new(PhaseKind.Management, 7, "")];
}
