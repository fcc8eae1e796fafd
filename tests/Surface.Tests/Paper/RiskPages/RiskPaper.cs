using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.RiskPages;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;

namespace Slantwise.Surface.Tests.Paper.RiskPages;

/// <summary>Risk pages to print: a usual one with all three levels of risk, and one with everything as long as it may be.</summary>
internal static class RiskPaper
{
    public static LessonRecord Record(int pupils = 6)
    {
        var record = PaperLessons.Of(pupils, PaperLessons.OneFoot, PaperLessons.Rope, PaperLessons.Tripod);
        record = record with
        {
            Lesson = record.Lesson with { MatCount = 8 },
            School = record.School with { Policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned }, EmergencyNotes = "First-aid box: by the door.\nTelephone: staff room, 112." },
        };
        return record.WithRestriction(record.Pupils[0], BodyDemand.Inversion).WithRestriction(record.Pupils[2], BodyDemand.Impact);
    }

    public static RiskMaterial Material(LessonRecord record) => new() { Content = record.Sheet!.Content };

    public static IReadOnlyList<Scene> Print(LessonRecord record, RiskMaterial material, PaperOptions options) => RiskPagePages.Of(RiskPage.Of(record, material, options.Language), options);

    public static PaperOptions Options(string language, PaperSize size = PaperSize.A4) => new(size, CultureInfo.GetCultureInfo(language));

    public static Incident Noted(LessonRecord record, Guid taskId, IncidentKind kind, string happened, string changed) => new()
    {
        SchoolId = record.School.Id, Id = Guid.CreateVersion7(), Kind = kind, Day = record.Lesson.Date.AddDays(-7), TaskId = taskId, Happened = happened, Changed = changed, WrittenAt = DateTimeOffset.UnixEpoch,
    };

    /// <summary>Everything at its limit: see RiskCheck, IncidentCheck and Limits in Records.</summary>
    public static (LessonRecord Record, RiskMaterial Material, IReadOnlyList<string> Written) Longest()
    {
        static string Text(string word, int length) => string.Concat(Enumerable.Repeat(word + " ", length))[..length].Trim();
        var record = PaperLessons.Of(30, [.. new[] { PaperLessons.OneFoot, PaperLessons.Rope, PaperLessons.Tripod }.Select((t, i) => t with { Name = Text("Wobbling", 80), Caution = Text($"Warning{i}", 300) })]);
        record = record with
        {
            Class = record.Class with { Name = Text("Wommwomm", 60) },
            Lesson = record.Lesson with { Title = Text("Mmmwmmm", 80), MatCount = 200 },
            School = record.School with
            {
                Name = Text("Schoolschool", 120), EmergencyNotes = Text("emergency", 1000),
                Policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned, HeadConditions = Enum.GetValues<SafetyCondition>() },
            },
        };
        foreach (var pupil in record.Pupils) record = record.WithRestriction(pupil, BodyDemand.HeadWeight);
        var tasks = record.Sheet!.Content.Tasks;
        var material = Material(record) with
        {
            Notes = new RiskNotes
            {
                Tasks = [.. tasks.Select((t, i) => new TaskRisk(t.TaskId, RiskLevel.High, [.. Enumerable.Range(0, RiskCheck.MostControls).Select(c => Text($"control{i}{c}", RiskCheck.LineLength))]))],
                EquipmentChecks = [.. Enumerable.Range(0, RiskCheck.MostChecks).Select(i => Text($"check{i}", RiskCheck.LineLength))],
                Notes = Text("notes", RiskCheck.NotesLength),
                ShowsNames = true,
            },
            Incidents = [.. tasks.SelectMany((t, i) => Enumerable.Range(0, 3).Select(n => Noted(record, t.TaskId, IncidentKind.NearMiss, Text($"happened{i}{n}", 1000), Text($"changed{i}{n}", 1000))))],
        };
        return (record, material, [
            .. tasks.Select(t => t.Caution), .. material.Notes.Tasks.SelectMany(t => t.Controls), .. material.Notes.EquipmentChecks, material.Notes.Notes, record.School.EmergencyNotes,
            .. material.Incidents.SelectMany(i => new[] { i.Happened, i.Changed }),
        ]);
    }
}
