namespace Slantwise.Records.Evidence;

/// <summary>Something the teacher wanted to remember of a pupil.</summary>
/// <param name="LessonId">In which lesson.</param>
/// <param name="MadeAt">When, by the device's clock, UTC.</param>
/// <param name="TaskId">About which task; none where no task is meant.</param>
/// <param name="Text">In the teacher's words.</param>
/// <param name="EntryId">Its entry.</param>
public sealed record NoteEvidence(Guid LessonId, DateTimeOffset MadeAt, Guid? TaskId, string Text, Guid EntryId);
