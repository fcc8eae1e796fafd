using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Records.Evidence.SelfChecks;

/// <summary>How pupils' own checks of a cue compare with the teacher's of the same sets.</summary>
/// <param name="TaskNumber">The task in the evidence, from 1; 0 for all cues of all tasks.</param>
/// <param name="TaskName">The task; empty for all.</param>
/// <param name="CueNumber">The cue, from 1; 0 for all.</param>
/// <param name="Text">The cue as the sheet says it; empty for all, and for one that is on no sheet.</param>
/// <param name="BlindCount">Of the checks compared, those the teacher made before seeing the tick.</param>
/// <param name="Agreement">What the engine says of them, the pupil as the first judge.</param>
/// <param name="EntryIds">The teacher's checks and the pupils' ticks of those sets.</param>
public sealed record CheckedCue(
    int TaskNumber, string TaskName, int CueNumber, string Text, int BlindCount, JudgeAgreement Agreement, IReadOnlyList<Guid> EntryIds);
