namespace Slantwise.Records.Tasks;

/// <summary>What a dose measures, and with it the unit of its amount.</summary>
public enum DoseKind
{
    /// <summary>A hold, in seconds.</summary>
    HoldS = 1,

    /// <summary>Repetitions without a miss, a count.</summary>
    RepetitionsCount = 2,

    /// <summary>A distance, in metres.</summary>
    DistanceM = 3,

    /// <summary>A height, in metres.</summary>
    HeightM = 4,

    /// <summary>The width of a target, in metres; smaller is harder.</summary>
    TargetSizeM = 5,
}
