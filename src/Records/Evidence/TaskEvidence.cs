using Slantwise.Records.Sheets;

namespace Slantwise.Records.Evidence;

/// <summary>What a class's entries say about one task: pooled, and without names.</summary>
public sealed record TaskEvidence
{
    /// <summary>The task.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>Its number in this evidence, from 1 in the order of the sheet.</summary>
    public required int TaskNumber { get; init; }

    /// <summary>The task's name; empty for a task that is on no sheet.</summary>
    public required string Name { get; init; }

    /// <summary>Every level of the sheet, tried or not; then levels with entries that are on no sheet; last, trials with no level written, where there are any.</summary>
    public IReadOnlyList<LevelEvidence> Levels { get; init; } = [];

    /// <summary>Every cue of the sheet in its order.</summary>
    public IReadOnlyList<CueEvidence> Cues { get; init; } = [];

    /// <summary>Predictions against what came.</summary>
    public required PredictionEvidence Predictions { get; init; }

    /// <summary>Decisions by the band of the set they followed.</summary>
    public IReadOnlyList<DecisionsAfter> DecisionsAfter { get; init; } = [];

    /// <summary>Pupils with anything written about it.</summary>
    public required int PupilCount { get; init; }

    internal static TaskEvidence Of(SheetTask task, int taskNumber, IReadOnlyList<SetEvidence> sets) => new()
    {
        TaskId = task.TaskId,
        TaskNumber = taskNumber,
        Name = task.Name,
        Levels = LevelsOf(task, sets),
        Cues = CueEvidence.Of(task.TaskId, task.Cues, sets),
        Predictions = PredictionEvidence.Of(sets),
        DecisionsAfter = Evidence.DecisionsAfter.Of(sets),
        PupilCount = sets.Select(s => s.PupilId).Distinct().Count(),
    };

    private static List<LevelEvidence> LevelsOf(SheetTask task, IReadOnlyList<SetEvidence> sets)
    {
        var chosen = sets.Where(s => s.LevelId is not null).ToList();
        var byPupil = chosen.GroupBy(s => s.PupilId).Select(g => (First: g.First().LevelId, Latest: g.Last().LevelId)).ToList();
        var onSheet = task.Levels.Select(l => l.Id).ToHashSet();
        var offSheet = chosen.Select(s => s.LevelId!.Value).Where(id => !onSheet.Contains(id)).Distinct().Order();

        var rows = task.Levels
            .Select((level, i) => LevelOf(level.Id, sets) with { LevelNumber = i + 1, Name = level.Name, Dose = level.Dose })
            .Concat(offSheet.Select(id => LevelOf(id, sets)))
            .Select(row => row with
            {
                StartPupilCount = byPupil.Count(p => p.First == row.LevelId),
                LatestPupilCount = byPupil.Count(p => p.Latest == row.LevelId),
            })
            .ToList();
        var without = LevelOf(null, sets);
        if (without.Success.TrialCount > 0) rows.Add(without);
        return rows;
    }

    private static LevelEvidence LevelOf(Guid? levelId, IReadOnlyList<SetEvidence> sets)
    {
        var here = sets.Where(s => s.LevelId == levelId).ToList();
        var success = SuccessShare.Of(here.SelectMany(s => s.Trials));
        return new LevelEvidence
        {
            LevelId = levelId,
            ChosenSetCount = here.Count(s => s.LevelId is not null),
            TriedByPupilCount = here.Where(s => s.Trials.Count > 0).Select(s => s.PupilId).Distinct().Count(),
            StartPupilCount = 0,
            LatestPupilCount = 0,
            Success = success,
            EntryIds = here.Where(s => s.ChoiceEntryId is not null).Select(s => s.ChoiceEntryId!.Value).Concat(success.EntryIds).ToList(),
        };
    }
}
