namespace Slantwise.Engines.Statistics.Orders;

/// <summary>One level among those of a sheet.</summary>
/// <param name="TriedCount">Pupils who tried it.</param>
/// <param name="PassedCount">Those who passed it.</param>
/// <param name="ErrorCount">Answers that differ from what the pupil's number of passes and the order foretell.</param>
public readonly record struct LevelAnswers(int TriedCount, int PassedCount, int ErrorCount);
