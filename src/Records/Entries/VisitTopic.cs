namespace Slantwise.Records.Entries;

/// <summary>What a visit was about.</summary>
public enum VisitTopic
{
    /// <summary>A decision about the level.</summary>
    Decision = 1,

    /// <summary>A cue and how it was checked.</summary>
    Cue = 2,

    /// <summary>A cause: where the weight was, what the base was.</summary>
    Cause = 3,

    /// <summary>Safety.</summary>
    Safety = 4,
}
