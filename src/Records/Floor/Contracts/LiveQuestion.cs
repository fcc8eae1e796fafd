namespace Slantwise.Records.Floor.Contracts;

/// <summary>Something the teacher could ask about, from the entries so far. Never a level to take, never a rank.</summary>
/// <param name="PupilId">Whom.</param>
/// <param name="IsSafety">Whether it is about a level that was removed for them: shown at once.</param>
/// <param name="Question">A neutral question.</param>
/// <param name="Reason">What stands behind it, with how many tries.</param>
public sealed record LiveQuestion(Guid PupilId, bool IsSafety, string Question, string Reason);
