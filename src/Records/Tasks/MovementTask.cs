using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks;

/// <summary>A movement skill to be learned: one task, offered at several levels, checked by the same cues at each.</summary>
public sealed record MovementTask
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The task's id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>The name in the pupils' language, 1 to 80 characters.</summary>
    public required string Name { get; init; }

    /// <summary>What the pupil sets out to do, one sentence in pupil words.</summary>
    public string Purpose { get; init; } = "";

    /// <summary>What to look or feel for, 1 to 5, in the order they are printed; the same for every level.</summary>
    public IReadOnlyList<string> Cues { get; init; } = [];

    /// <summary>The usual caution, shown with the task; empty where there is none.</summary>
    public string Caution { get; init; } = "";

    /// <summary>The levels in the teacher's order from easier to harder. The order is a hypothesis.</summary>
    public IReadOnlyList<Level> Levels { get; init; } = [];
}
