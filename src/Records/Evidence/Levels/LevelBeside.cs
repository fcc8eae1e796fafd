namespace Slantwise.Records.Evidence.Levels;

/// <summary>A level of the same task, and how the level read compares with it.</summary>
/// <param name="LevelPlace">Its place in the task's evidence, from 0.</param>
/// <param name="Level">What the class's entries say about it.</param>
/// <param name="IsOfferedToAnybody">Whether the school's policy leaves it to anybody.</param>
/// <param name="Middle">The chance at it in the middle of the class; none where it is offered to nobody or the model has none.</param>
/// <param name="Difference">How the level read compares with it; none for that level itself, or where the model cannot say.</param>
public sealed record LevelBeside(int LevelPlace, LevelEvidence Level, bool IsOfferedToAnybody, LevelChance? Middle, LevelDifference? Difference);
