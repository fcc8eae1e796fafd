using Slantwise.Records.Entries;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tests.Planning;

namespace Slantwise.Records.Tests.Groups;

/// <summary>A class to be grouped: pupils P1, P2, ... of a lesson.</summary>
internal static class GroupLesson
{
    public static GroupRoster Roster(int pupils) => GroupRoster.Of(PlannedLesson.Of(pupils), leavesOutAbsent: false);

    /// <summary>The pupil called so.</summary>
    public static Guid Of(this GroupRoster roster, string name) => roster.Class.Single(p => p.Label == name).Id;

    /// <summary>The lesson with some pupils noted as absent.</summary>
    public static LessonRecord Without(this LessonRecord record, params int[] numbers) => record with
    {
        Entries =
        [
            .. numbers.Select((n, i) => new Entry
            {
                Id = Guid.CreateVersion7(), SchoolId = record.School.Id, LessonId = record.Lesson.Id, PupilId = record.Pupils[n - 1].Id, Fact = new Presence(false),
                Source = EntrySource.Desk, DeviceId = "desk", DeviceSequence = i + 1, MadeAt = new(2026, 9, 14, 9, 0, i, TimeSpan.Zero),
            }),
        ],
    };

    /// <summary>Groups by pupils' names, sorted.</summary>
    public static string Shown(this GroupPlan plan, GroupRoster roster) =>
        string.Join(" | ", plan.Groups.Select(g => string.Join(' ', g.PupilIds.Select(roster.NameOf).Order(StringComparer.Ordinal))));
}
