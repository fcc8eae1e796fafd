namespace Slantwise.Records.Planning;

/// <summary>Why a lesson cannot be planned in numbers.</summary>
public enum PlanningProblem
{
    /// <summary>The class has no pupils.</summary>
    NoPupils = 1,

    /// <summary>More than 200 pupils.</summary>
    TooManyPupils = 2,

    /// <summary>The phases are longer than 4 hours.</summary>
    TooLong = 3,
}
