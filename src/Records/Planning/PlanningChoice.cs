namespace Slantwise.Records.Planning;

/// <summary>What somebody wants to try in a plan in place of what the lesson says; none of it is kept.</summary>
public sealed record PlanningChoice
{
    /// <summary>Mats that can be tried at most.</summary>
    public const int MostMats = 100;

    /// <summary>Pupils a mat that can be tried at most.</summary>
    public const int MostPupilsAMat = 30;

    /// <summary>The longest rest, or time to write, that can be tried.</summary>
    public const double MostS = 600;

    /// <summary>Nothing else than the lesson says.</summary>
    public static PlanningChoice Usual { get; } = new();

    /// <summary>Mats, 1 to <see cref="MostMats"/>; none for those of the lesson.</summary>
    public int? MatCount { get; init; }

    /// <summary>Pupils who share a mat, 1 to <see cref="MostPupilsAMat"/>. Where given it says how many mats that takes, whatever <see cref="MatCount"/> is.</summary>
    public int? PupilsAMat { get; init; }

    /// <summary>Rest before the next try of one's own, 0 to <see cref="MostS"/>; none for the usual.</summary>
    public double? RestS { get; init; }

    /// <summary>Writing down, 0 to <see cref="MostS"/>; none for the usual.</summary>
    public double? RecordS { get; init; }

    /// <summary>The seed of the simulated lessons; none for the lesson's own.</summary>
    public ulong? Seed { get; init; }

    /// <summary>Whether everything lies within its range.</summary>
    public bool IsWithin =>
        MatCount is null or (>= 1 and <= MostMats) && PupilsAMat is null or (>= 1 and <= MostPupilsAMat)
        && RestS is null or (>= 0 and <= MostS) && RecordS is null or (>= 0 and <= MostS);
}
