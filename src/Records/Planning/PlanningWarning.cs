namespace Slantwise.Records.Planning;

/// <summary>What to know of a plan before relying on it.</summary>
public enum PlanningWarning
{
    /// <summary>No mats are planned; their number is assumed.</summary>
    NoMatsPlanned = 1,

    /// <summary>No phases are planned; the lesson's length is assumed.</summary>
    NoPhasesPlanned = 2,

    /// <summary>No sheet is chosen; sets, tries and their time are assumed.</summary>
    NoSheet = 3,

    /// <summary>There is no time at the mats.</summary>
    NoPractice = 4,

    /// <summary>What is tried takes more mats than are planned.</summary>
    MoreMatsThanPlanned = 5,

    /// <summary>By mean times the last one is done after the practice has ended.</summary>
    LastAfterEnd = 6,

    /// <summary>By mean times all are done in time, but not if talk takes a quarter longer.</summary>
    TalkOverruns = 7,

    /// <summary>By mean times somebody has not one try.</summary>
    SomebodyWithout = 8,

    /// <summary>More mats than pupils at them.</summary>
    EmptyMats = 9,

    /// <summary>More places on a mat than pupils at it.</summary>
    EmptyPlaces = 10,

    /// <summary>A group at a mat is too small for one performer with partners and observers.</summary>
    TooFewForRoles = 11,

    /// <summary>Somebody who waits should write, but at a mat all perform at once.</summary>
    NobodyToRecord = 12,
}
