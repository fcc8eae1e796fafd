namespace Slantwise.Desk.Progress;

/// <summary>What a lesson waits for, in the order of the work.</summary>
public enum LessonStep
{
    /// <summary>No sheet is chosen yet.</summary>
    ChooseSheet = 1,

    /// <summary>The sheet is to be prepared and printed.</summary>
    Print = 2,

    /// <summary>The lesson day has come and somebody's sheet is not typed in.</summary>
    EnterResults = 3,

    /// <summary>Everybody's sheet is typed in.</summary>
    SeeEvidence = 4,
}
