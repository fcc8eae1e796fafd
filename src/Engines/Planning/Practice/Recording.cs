namespace Slantwise.Engines.Planning.Practice;

/// <summary>Who writes a result down, and where.</summary>
public enum Recording
{
    /// <summary>The performer, while still on the mat: the next one waits.</summary>
    PerformerOnMat = 1,

    /// <summary>The performer, beside the mat.</summary>
    PerformerBeside = 2,

    /// <summary>Somebody who waits: it takes nobody's time from practice.</summary>
    Observer = 3,
}
