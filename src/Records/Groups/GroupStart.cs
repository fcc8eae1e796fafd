using System.Buffers.Binary;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Groups;

/// <summary>What a lesson's groups begin with: its own plan, or what was wished and said in the class's lesson before.</summary>
/// <param name="Plan">The plan, for those who are in the class now.</param>
/// <param name="IsKept">Whether the lesson has a plan of its own.</param>
/// <param name="From">The lesson whose wishes were taken over; none where there is none, or where the plan is the lesson's own.</param>
public sealed record GroupStart(GroupPlan Plan, bool IsKept, Lesson? From)
{
    /// <summary>Finds it.</summary>
    /// <param name="store">Where the plans are.</param>
    /// <param name="record">The lesson.</param>
    /// <param name="cancel">Stops the looking.</param>
    public static async Task<GroupStart> FindAsync(IStore store, LessonRecord record, CancellationToken cancel = default) =>
        Of(record, await store.ListLessonGroupsAsync(record.School.Id, cancel), await store.ListLessonsAsync(record.School.Id, cancel));

    /// <summary>Finds it among plans.</summary>
    /// <param name="record">The lesson.</param>
    /// <param name="plans">The plans of any lessons.</param>
    /// <param name="lessons">The school's lessons.</param>
    public static GroupStart Of(LessonRecord record, IReadOnlyList<LessonGroups> plans, IReadOnlyList<Lesson> lessons)
    {
        var lesson = record.Lesson;
        if (plans.FirstOrDefault(p => p.LessonId == lesson.Id) is { } own) return new(own.Plan.For(GroupRoster.Of(record, own.Plan.LeavesOutAbsent)), true, null);
        var byLesson = plans.ToDictionary(p => p.LessonId);
        // A lesson of the same day may be the other half of a double lesson: the id only keeps the choice the same.
        var from = lessons.Where(l => l.ClassId == lesson.ClassId && l.Id != lesson.Id && l.Date <= lesson.Date && byLesson.ContainsKey(l.Id)).OrderBy(l => l.Date).ThenBy(l => l.Id).LastOrDefault();
        var before = from is null ? new GroupPlan() : byLesson[from.Id].Plan;
        var plan = new GroupPlan
        {
            Goal = before.Goal, Sizing = before.Sizing, Wishes = before.Wishes, NeedsSupporter = before.NeedsSupporter, Known = before.Known, LeavesOutAbsent = before.LeavesOutAbsent,
            Seed = SeedOf(lesson.Id),
        };
        return new(plan.For(GroupRoster.Of(record, plan.LeavesOutAbsent)), false, from);
    }

    // The random end of the id: each lesson begins with groups of its own.
    private static int SeedOf(Guid lessonId) => (int)(BinaryPrimitives.ReadUInt32BigEndian(lessonId.ToByteArray().AsSpan(12)) % GroupPlan.SeedCount);
}
