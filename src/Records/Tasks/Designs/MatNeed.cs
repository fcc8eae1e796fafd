namespace Slantwise.Records.Tasks.Designs;

/// <summary>How many mats a task takes.</summary>
/// <param name="MatCount">0 to 4.</param>
/// <param name="Per">Whom that number is for.</param>
public sealed record MatNeed(int MatCount, MatShare Per);
