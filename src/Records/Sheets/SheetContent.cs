namespace Slantwise.Records.Sheets;

/// <summary>What a pupil finds on a sheet.</summary>
public sealed record SheetContent
{
    /// <summary>The heading the pupil reads.</summary>
    public required string Title { get; init; }

    /// <summary>The tasks, 1 to 3, in the order they are printed.</summary>
    public IReadOnlyList<SheetTask> Tasks { get; init; } = [];

    /// <summary>Sets a task, 1 to 4: before each set the pupil may change level.</summary>
    public int SetCount { get; init; } = 3;

    /// <summary>Trials a set, 1 to 10.</summary>
    public int TrialCount { get; init; } = 5;

    /// <summary>What the pupil predicts before the first trial of each set.</summary>
    public PredictionKind Predicts { get; init; } = PredictionKind.SuccessCount;
}
