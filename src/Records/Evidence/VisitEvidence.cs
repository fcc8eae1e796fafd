using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence;

/// <summary>A short talk with a pupil.</summary>
/// <param name="LessonId">In which lesson.</param>
/// <param name="MadeAt">When, by the device's clock, UTC.</param>
/// <param name="Topic">What it was about.</param>
/// <param name="Form">How the teacher spoke.</param>
/// <param name="Note">What was noted; may be empty.</param>
/// <param name="EntryId">Its entry.</param>
public sealed record VisitEvidence(Guid LessonId, DateTimeOffset MadeAt, VisitTopic Topic, VisitForm Form, string Note, Guid EntryId);
