using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Evidence.Foresight;

/// <summary>
/// What was believed of a class before each of its lessons, kept: what is typed into a lesson changes nothing of what was believed before it.
/// Several threads may use it.
/// </summary>
public sealed class EarlierFits
{
    private readonly Lock _oneAtATime = new();
    private readonly Dictionary<Guid, Kept> _fits = [];

    /// <summary>How often a class was fitted.</summary>
    public int FitCount { get; private set; }

    // The same objects, not merely alike: whoever loads a class again keeps the records that have not changed.
    internal ClassChances Before(IReadOnlyList<LessonRecord> before, LessonRecord now)
    {
        lock (_oneAtATime)
        {
            if (_fits.TryGetValue(now.Lesson.Id, out var kept) && kept.IsFor(before, now)) return kept.Chances;
            FitCount++;
            var chances = ClassChances.Of(before, now.Sheet?.Content.Tasks ?? [], [], now.Pupils);
            _fits[now.Lesson.Id] = new(before, now.Sheet, now.Pupils, chances);
            return chances;
        }
    }

    private sealed record Kept(IReadOnlyList<LessonRecord> Before, SheetVersion? Sheet, IReadOnlyList<Pupil> Pupils, ClassChances Chances)
    {
        public bool IsFor(IReadOnlyList<LessonRecord> before, LessonRecord now) =>
            ReferenceEquals(Sheet, now.Sheet) && ReferenceEquals(Pupils, now.Pupils) && Before.SequenceEqual(before, ReferenceEqualityComparer.Instance);
    }
}
