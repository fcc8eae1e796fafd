using System.Globalization;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Tests.Planning;

namespace Slantwise.Records.Tests.Safety;

/// <summary>Lessons with tasks of the library, to make risk pages of.</summary>
internal static class RiskLesson
{
    public static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    public static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    public static TaskDesign Design(string name) => TaskLibrary.Designs.Single(d => d.Words["en"].Name == name);

    public static SheetTask TaskOf(TaskDesign design, string language = "en")
    {
        var task = design.ToTask(language, Guid.Empty);
        return SheetTask.Of(task, task.Levels);
    }

    public static SheetTask TaskOf(string name) => TaskOf(Design(name));

    /// <summary>A task of the teacher's own, without a design.</summary>
    public static SheetTask Own(string name, params BodyDemand[][] levels) => new()
    {
        TaskId = new Guid(77, 0, 0, new byte[8]), Name = name, Caution = "",
        Levels = [.. levels.Select((demands, i) => new Level { Id = new Guid(78, (short)i, 0, new byte[8]), Name = $"way {i + 1}", Dose = new Dose(DoseKind.HoldS, 3), Demands = demands })],
    };

    public static RiskMaterial Material(params SheetTask[] tasks) => new() { Content = new SheetContent { Title = "Balance", Tasks = tasks } };

    public static RiskPage Page(LessonRecord record, RiskMaterial material, CultureInfo? culture = null) => RiskPage.Of(record, material, culture ?? English);

    public static RiskPage Page(params SheetTask[] tasks) => Page(Record(), Material(tasks));

    public static LessonRecord Record(int pupils = 28, int? mats = 10, SafetyPolicy? policy = null, string emergency = "First-aid box by the door.")
    {
        var record = PlannedLesson.Of(pupils, mats);
        return record with { School = record.School with { Policy = policy ?? new SafetyPolicy(), EmergencyNotes = emergency } };
    }

    public static LessonRecord Restricted(this LessonRecord record, int pupil, BodyDemand without, DateOnly? until = null) => record with
    {
        Restrictions =
        [
            .. record.Restrictions,
            new Restriction { SchoolId = record.School.Id, Id = Guid.CreateVersion7(), PupilId = record.Pupils[pupil].Id, Without = without, Until = until },
        ],
    };

    public static Incident Incident(Guid? taskId, DateOnly day, string happened = "Two on one mat.", string changed = "One mat each.") => new()
    {
        SchoolId = Guid.Empty, Id = Guid.CreateVersion7(), Kind = IncidentKind.NearMiss, Day = day, TaskId = taskId, Happened = happened, Changed = changed, WrittenAt = DateTimeOffset.UnixEpoch,
    };
}
