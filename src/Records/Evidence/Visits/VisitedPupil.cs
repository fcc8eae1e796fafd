namespace Slantwise.Records.Evidence.Visits;

/// <summary>Talks noted with one pupil.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Label">What to call the pupil.</param>
/// <param name="Visits">The talks, earliest first.</param>
/// <param name="AttendedCount">Lessons held so far in which the pupil was not marked absent.</param>
/// <param name="WaitedCount">Of these, the latest in a row without a talk.</param>
public sealed record VisitedPupil(Guid PupilId, string Label, IReadOnlyList<VisitEvidence> Visits, int AttendedCount, int WaitedCount);
