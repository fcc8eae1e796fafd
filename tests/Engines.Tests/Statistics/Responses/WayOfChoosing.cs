namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>How simulated pupils come to their levels.</summary>
public enum WayOfChoosing
{
    /// <summary>Any level is as likely as any other.</summary>
    AtRandom,

    /// <summary>A level a little below where the last trials have been, by what a sheet shows: up after a success, down after a failure.</summary>
    ByPastOutcomes,

    /// <summary>A level a little below the own ability, of which a pupil has a fair idea.</summary>
    ByPrivateKnowledge,
}
