namespace Slantwise.Engines.Statistics;

/// <summary>Where the share behind a count of successes lies, as far as the trials can say.</summary>
public enum SuccessReading
{
    /// <summary>The trials cannot tell yet.</summary>
    NotEnoughTries = 0,

    /// <summary>Very likely below the band.</summary>
    Below = 1,

    /// <summary>Very likely inside the band.</summary>
    Within = 2,

    /// <summary>Very likely above the band.</summary>
    Above = 3,
}
