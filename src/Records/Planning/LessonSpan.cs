using Slantwise.Records.Lessons;

namespace Slantwise.Records.Planning;

/// <summary>A block of a lesson as it is planned with: a phase, longer or shorter where other talk is tried.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="DurationS">How long, above 0.</param>
/// <param name="Note">The teacher's note on the phase; may be empty.</param>
public sealed record LessonSpan(PhaseKind Kind, double DurationS, string Note)
{
    /// <summary>The blocks of a lesson.</summary>
    /// <param name="phases">Its phases.</param>
    /// <param name="talkMin">Talk before practice ends, in place of what the phases say; none for what they say.</param>
    /// <returns>
    /// As long together as the phases. Talk is shortened or drawn out where it stands, each of it by the same share, and practice likewise makes up for it; where no talk is planned it comes right
    /// before practice. More talk than talk and practice have together takes all of both; without practice there is nothing to make up for it, and the phases stay.
    /// </returns>
    internal static IReadOnlyList<LessonSpan> Of(IReadOnlyList<LessonPhase> phases, double? talkMin)
    {
        List<LessonSpan> spans = [.. phases.Select(p => new LessonSpan(p.Kind, p.DurationMin * 60.0, p.Note))];
        var first = spans.FindIndex(s => s.Kind == PhaseKind.Activity);
        if (talkMin is not { } min || !spans.Any(s => s is { Kind: PhaseKind.Activity, DurationS: > 0 })) return spans;
        var last = spans.FindLastIndex(s => s.Kind == PhaseKind.Activity);
        if (!spans.Take(last).Any(s => s is { Kind: PhaseKind.Instruction, DurationS: > 0 }))
        {
            spans.Insert(first, new(PhaseKind.Instruction, 0, ""));
            last++;
        }
        double Sum(PhaseKind kind) => spans.Take(last + 1).Where(s => s.Kind == kind).Sum(s => s.DurationS);
        var (talkS, practiceS) = (Sum(PhaseKind.Instruction), Sum(PhaseKind.Activity));
        var newTalkS = Math.Min(min * 60, talkS + practiceS);
        var newPracticeS = talkS + practiceS - newTalkS;
        var changed = spans.Select((s, i) => i > last ? s : s.Kind switch
        {
            PhaseKind.Instruction => s with { DurationS = talkS > 0 ? s.DurationS / talkS * newTalkS : newTalkS },
            PhaseKind.Activity => s with { DurationS = s.DurationS / practiceS * newPracticeS },
            _ => s,
        });
        // A block of no time is no block.
        return [.. changed.Where(s => s.DurationS > 1e-6)];
    }
}
