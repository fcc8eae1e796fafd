using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence;

/// <summary>What a class's entries say about one level of a task.</summary>
public sealed record LevelEvidence
{
    /// <summary>The level; none for trials with no level written.</summary>
    public Guid? LevelId { get; init; }

    /// <summary>Its number in this evidence's list, from 1 in the order of the sheet; none for no level, or one on no sheet.</summary>
    public int? LevelNumber { get; init; }

    /// <summary>How it is done; empty where it is on no sheet.</summary>
    public string Name { get; init; } = "";

    /// <summary>How much makes a success; none where it is on no sheet.</summary>
    public Dose? Dose { get; init; }

    /// <summary>Sets for which it was chosen.</summary>
    public required int ChosenSetCount { get; init; }

    /// <summary>Different pupils with a trial at it; 0 says: not tried by anybody.</summary>
    public required int TriedByPupilCount { get; init; }

    /// <summary>Pupils whose first level it was.</summary>
    public required int StartPupilCount { get; init; }

    /// <summary>Pupils whose latest level it is.</summary>
    public required int LatestPupilCount { get; init; }

    /// <summary>All trials at it, with n and a range.</summary>
    public required SuccessShare Success { get; init; }

    /// <summary>The choices' and trials' entries.</summary>
    public IReadOnlyList<Guid> EntryIds { get; init; } = [];
}
