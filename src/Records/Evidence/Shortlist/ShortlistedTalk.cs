namespace Slantwise.Records.Evidence.Shortlist;

/// <summary>A talk for tomorrow, and why this pupil now.</summary>
/// <param name="Conference">The reason in the data and the question.</param>
/// <param name="TrialCount">Tries of the pupil in all lessons looked at: how much is known.</param>
/// <param name="LessonsSinceTalk">Lessons since a talk with the pupil was noted, 0 for the latest one; none where none was.</param>
/// <param name="LessonCount">The lessons looked at.</param>
public sealed record ShortlistedTalk(Conference Conference, int TrialCount, int? LessonsSinceTalk, int LessonCount);
