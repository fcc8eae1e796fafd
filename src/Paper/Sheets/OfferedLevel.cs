using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Paper.Sheets;

/// <summary>
/// A level a pupil may choose, with the sheet's number for it, by which it is read back. What is printed for a pupil counts from 1 without a gap, in this order.
/// </summary>
internal sealed record OfferedLevel(int Number, Level Level)
{
    /// <summary>What a task offers a pupil on the lesson's day; for no pupil, what the policy leaves.</summary>
    public static IReadOnlyList<OfferedLevel> Of(SheetTask task, LessonRecord record, Pupil? pupil)
    {
        var restrictions = record.Restrictions.Where(r => r.PupilId == pupil?.Id);
        var ids = Offer.LevelsFor(task.Levels, record.School.Policy, restrictions, record.Lesson.Date).Select(l => l.Id).ToHashSet();
        return [.. task.Levels.Select((level, i) => new OfferedLevel(i + 1, level)).Where(l => ids.Contains(l.Level.Id))];
    }
}
