using Slantwise.Records.Entries;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Simulation;

/// <summary>Everything a simulated unit of lessons depends on. The same plan gives the same entries, to the byte.</summary>
public sealed record SimulationPlan
{
    /// <summary>What all draws start from.</summary>
    public required ulong Seed { get; init; }

    /// <summary>What the draws about levels and cues start from; none: the seed. Classes that share it meet the same difficulties.</summary>
    public ulong? MovementSeed { get; init; }

    /// <summary>The school, with its policy.</summary>
    public required School School { get; init; }

    /// <summary>The pupils of the class, each once.</summary>
    public required IReadOnlyList<Pupil> Pupils { get; init; }

    /// <summary>The pupils' restrictions.</summary>
    public IReadOnlyList<Restriction> Restrictions { get; init; } = [];

    /// <summary>The lessons, earliest first.</summary>
    public required IReadOnlyList<SimulatedLesson> Lessons { get; init; }

    /// <summary>Which tasks draw on one ability: task id to the name of a family. A task not named is a family of its own.</summary>
    public IReadOnlyDictionary<Guid, string> Families { get; init; } = new Dictionary<Guid, string>();

    /// <summary>What pupils are drawn from.</summary>
    public PupilPopulation Population { get; init; } = new();

    /// <summary>How complete the records are.</summary>
    public PaperMess Mess { get; init; } = new();

    /// <summary>Pupils who are set and not drawn, by pupil id.</summary>
    public IReadOnlyDictionary<Guid, PupilBent> PupilBents { get; init; } = new Dictionary<Guid, PupilBent>();

    /// <summary>Levels that are set and not drawn, by level id.</summary>
    public IReadOnlyDictionary<Guid, LevelBent> LevelBents { get; init; } = new Dictionary<Guid, LevelBent>();

    /// <summary>Cues that are set and not drawn.</summary>
    public IReadOnlyList<CueBent> CueBents { get; init; } = [];

    /// <summary>Where a task's first level lies; levels in between are spread evenly.</summary>
    public double EasiestLogits { get; init; } = -2.4;

    /// <summary>Where a task's last level lies.</summary>
    public double HardestLogits { get; init; } = 1.8;

    /// <summary>How far levels stray from an even spread: the teacher's order is a hypothesis.</summary>
    public double LevelSdLogits { get; init; } = 0.3;

    /// <summary>What a hold e times as long costs in log odds, more than 0; the same number is the shape of the hold times.</summary>
    public double HoldSlopeLogits { get; init; } = 1.4;

    /// <summary>What pupils may write as a reason, by decision; nothing where there is no list.</summary>
    public IReadOnlyDictionary<NextLevel, IReadOnlyList<string>> Reasons { get; init; } =
        new Dictionary<NextLevel, IReadOnlyList<string>>();

    /// <summary>Where the entries say they came from.</summary>
    public EntrySource Source { get; init; } = EntrySource.Desk;

    /// <summary>The device the entries name.</summary>
    public string DeviceId { get; init; } = "simulator";
}
