using Slantwise.Records.Evidence.HoldCurves;

namespace Slantwise.Records.Evidence.Levels;

/// <summary>What a class's entries say about one level, and what is believed of it. To the teacher only; pupils stand in the order of names, never of success.</summary>
public sealed record LevelReading
{
    /// <summary>The task.</summary>
    public required TaskEvidence Task { get; init; }

    /// <summary>The level's place in the task's evidence, from 0.</summary>
    public required int LevelPlace { get; init; }

    /// <summary>What the entries say.</summary>
    public LevelEvidence Level => Task.Levels[LevelPlace];

    /// <summary>Whether the school's policy leaves it to anybody.</summary>
    public required bool IsOfferedToAnybody { get; init; }

    /// <summary>Every pupil of the class by label, those who have not tried it included.</summary>
    public required IReadOnlyList<PupilAtLevel> Pupils { get; init; }

    /// <summary>Every level of the sheets in their order, this one included.</summary>
    public required IReadOnlyList<LevelBeside> Levels { get; init; }

    /// <summary>The chance in the middle of the class in the next lesson; none where it is offered to nobody or the model has none.</summary>
    public LevelChance? Middle => Levels.FirstOrDefault(l => l.LevelPlace == LevelPlace)?.Middle;

    /// <summary>For how many it is likely in the band next time; none before any try, and where it is offered to nobody.</summary>
    public LevelBand? Band { get; init; }

    /// <summary>How long holds last; none where its dose is no time, or nobody tried.</summary>
    public LevelHolds? Holds { get; init; }

    /// <summary>The task's cues in the sets at this level.</summary>
    public required IReadOnlyList<CueEvidence> Cues { get; init; }

    /// <summary>What pupils decided after sets here.</summary>
    public required LevelDecisions Decisions { get; init; }
}
