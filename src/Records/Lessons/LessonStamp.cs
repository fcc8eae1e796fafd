namespace Slantwise.Records.Lessons;

/// <summary>What tells whether anything about a lesson's entries or its frozen sheet has changed, without reading them.</summary>
/// <param name="LessonId">The lesson.</param>
/// <param name="EntryCount">Its entries, superseded ones included: it falls only where a pupil is erased or a backup restored.</param>
/// <param name="LastReceivedAt">When the store received the last of them, UTC; none where there is no entry.</param>
/// <param name="FrozenAt">When its sheet was frozen, UTC; none before.</param>
/// <remarks>
/// Entries are never changed, so that count and last receipt tell a log from any that it was or will be, unless a clock is set back to the very instant
/// after just as many entries were taken out.
/// </remarks>
public sealed record LessonStamp(Guid LessonId, int EntryCount, DateTimeOffset? LastReceivedAt, DateTimeOffset? FrozenAt);
