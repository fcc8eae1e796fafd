namespace Slantwise.Records.Tasks.Designs;

/// <summary>The unit of a factor whose values are numbers.</summary>
public enum FactorUnit
{
    /// <summary>Seconds.</summary>
    S = 1,

    /// <summary>Metres.</summary>
    M = 2,

    /// <summary>A count.</summary>
    Count = 3,

    /// <summary>Degrees, as of a turn.</summary>
    Deg = 4,
}
