using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Records.Groups;

/// <summary>Groups, and what was wished for them.</summary>
public sealed partial record GroupPlan
{
    /// <summary>Wishes there may be at most.</summary>
    public const int MostWishes = 100;

    /// <summary>Seeds there are.</summary>
    public const int SeedCount = 1_000_000;

    /// <summary>The groups, 1 to 30.</summary>
    public IReadOnlyList<LessonGroup> Groups { get; init; } = [];

    /// <summary>Mixed, alike, or any.</summary>
    public GroupGoal Goal { get; init; }

    /// <summary>Wishes about two pupils, at most 100. A class's next lesson starts with them.</summary>
    public IReadOnlyList<PupilWish> Wishes { get; init; } = [];

    /// <summary>Whether each group should have somebody who may support.</summary>
    public bool NeedsSupporter { get; init; }

    /// <summary>What was said of pupils. A class's next lesson starts with it.</summary>
    public IReadOnlyList<KnownExperience> Known { get; init; } = [];

    /// <summary>How many groups are asked for when they are made.</summary>
    public GroupSizing Sizing { get; init; } = GroupSizing.Usual;

    /// <summary>Whether pupils noted as absent in this lesson are left out.</summary>
    public bool LeavesOutAbsent { get; init; }

    /// <summary>The seed: the same one gives the same groups. 0 to 999999.</summary>
    public int Seed { get; init; }
}
