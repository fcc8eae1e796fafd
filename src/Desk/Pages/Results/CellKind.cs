namespace Slantwise.Desk.Pages.Results;

/// <summary>The columns of a set, in the order a pupil fills them in.</summary>
public enum CellKind
{
    /// <summary>The number of the level chosen.</summary>
    Level,

    /// <summary>What was predicted: a count of successes, or seconds.</summary>
    Prediction,

    /// <summary>One try: held or not, or how long.</summary>
    Trial,

    /// <summary>The numbers of the cues ticked.</summary>
    Cues,

    /// <summary>The letter of the decision.</summary>
    Decision,

    /// <summary>Why, in the pupil's words.</summary>
    Reason,
}
