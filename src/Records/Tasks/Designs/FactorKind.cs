namespace Slantwise.Records.Tasks.Designs;

/// <summary>Whether a factor changes the movement or only how much of it there is.</summary>
public enum FactorKind
{
    /// <summary>Part of the movement: base, shape, height, distance, size, speed.</summary>
    Intrinsic = 1,

    /// <summary>How much of it: hold, repetitions, sets.</summary>
    External = 2,
}
