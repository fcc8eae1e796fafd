namespace Slantwise.Records.Evidence.Live;

/// <summary>How the tries of one lesson at a level lie to the range that all tries together speak of.</summary>
public enum TodaysTries
{
    /// <summary>As such tries may well come out.</summary>
    AsExpected,

    /// <summary>Fewer successes than even the low end of the range leads to expect.</summary>
    Fewer,

    /// <summary>More successes than even the high end leads to expect.</summary>
    More,
}
