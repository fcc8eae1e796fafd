using System.CommandLine;
using System.Globalization;
using System.Text;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Host.Commands;

/// <summary><c>reach</c>: whom a lesson's sheet includes, from what the class did in the lessons before it.</summary>
internal static class ReachCommand
{
    public static Command Of(GlobalOptions options)
    {
        var pick = new LessonPick();
        var low = new Option<double>("--low") { Description = HostWords.Say("OptionLow"), HelpName = "0..1", DefaultValueFactory = _ => ReachBand.Usual.LowFraction };
        var high = new Option<double>("--high") { Description = HostWords.Say("OptionHigh"), HelpName = "0..1", DefaultValueFactory = _ => ReachBand.Usual.HighFraction };
        var command = new Command("reach", HostWords.Say("ReachHelp")) { low, high };
        pick.AddTo(command);
        command.SetAction(async (parsed, cancel) =>
        {
            var band = BandOf(parsed.GetValue(low), parsed.GetValue(high));
            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var lesson = await pick.LessonAsync(parsed, open.Store, school, isWritten: false, cancel);
            var record = await open.RecordAsync(lesson, cancel);
            var sheet = await SheetOfAsync(open.Store, record, cancel);
            // What came after the lesson, and the lesson itself, is not known before it.
            var earlier = (await LessonRecord.LoadClassAsync(open.Store, school.Id, lesson.ClassId, cancel)).Where(r => r.Lesson.Date < lesson.Date).ToList();
            var kept = await open.Store.ListTasksAsync(school.Id, cancel);
            var work = new ResponseWork(Math.Max(1, Environment.ProcessorCount), Cancellation: cancel);
            var reach = ClassReach.Of(sheet, kept, earlier, record.Pupils, school.Policy, record.Restrictions, lesson.Date, band, work);
            var readings = reach.Zip(sheet.Tasks).Select(t => ReachReading.Of(t.First, t.Second, band, CultureInfo.CurrentUICulture)).ToList();
            Answer.Say(parsed, options, Lines(record, sheet, readings), Json(record, sheet, band, reach, readings));
            return 0;
        });
        return command;
    }

    private static ReachBand BandOf(double low, double high)
    {
        try
        {
            return new ReachBand(low, high);
        }
        catch (ArgumentOutOfRangeException)
        {
            throw Refusal.Of("ReachBand", low, high);
        }
    }

    // A sheet that was printed counts as printed; one that was not, as it stands now.
    private static async Task<SheetContent> SheetOfAsync(IStore store, LessonRecord record, CancellationToken cancel)
    {
        if (record.Sheet is { } frozen) return frozen.Content;
        return record.Lesson.SheetId is { } id && await store.FindSheetAsync(record.School.Id, id, cancel) is { } sheet
            ? sheet.Draft
            : throw Refusal.Of("LessonWithoutSheet");
    }

    private static string Lines(LessonRecord record, SheetContent sheet, IReadOnlyList<ReachReading> readings)
    {
        var text = new StringBuilder();
        text.AppendLine(string.Join(" · ", new[] { record.Class.Name, HostWords.Day(record.Lesson.Date), sheet.Title }.Where(t => t.Length > 0)));
        foreach (var (task, reading) in sheet.Tasks.Zip(readings))
        {
            text.AppendLine().AppendLine(task.Name).AppendLine("  " + reading.Headline);
            foreach (var note in reading.Notes) text.AppendLine("  " + note.Sentence);
        }
        if (readings.Count > 0) text.AppendLine().Append(readings[0].Grounds);
        return text.ToString().TrimEnd();
    }

    private static object Json(LessonRecord record, SheetContent sheet, ReachBand band, IReadOnlyList<TaskReach> reach, IReadOnlyList<ReachReading> readings) => new
    {
        lessonId = record.Lesson.Id,
        className = record.Class.Name,
        date = record.Lesson.Date,
        lowFraction = band.LowFraction,
        highFraction = band.HighFraction,
        tasks = reach.Select((task, t) => new
        {
            taskId = task.TaskId,
            name = sheet.Tasks[t].Name,
            trialCount = task.TrialCount,
            pupilCount = task.Pupils.Count,
            includedCount = task.Whole.IncludedCount,
            leastCount = task.Whole.LeastCount,
            mostCount = task.Whole.MostCount,
            levels = task.Levels.Zip(sheet.Tasks[t].Levels, (reached, level) => new { levelId = level.Id, name = level.Name, dose = level.Dose, pupilCount = reached.PupilCount, neededFraction = reached.NeededFraction }),
            pupils = task.Pupils.Select(p => new
            {
                pupilId = p.PupilId,
                label = p.Label,
                standing = p.StandingIn(band),
                includedFraction = p.Reach.IncludedFraction,
                stretchedFraction = p.Reach.StretchedFraction,
                allowedCount = p.Reach.AllowedCount,
                trialCount = p.TrialCount,
                isMostlyAssumed = p.IsMostlyAssumed,
            }),
            addition = task.Addition,
            headline = readings[t].Headline,
            notes = readings[t].Notes,
            grounds = readings[t].Grounds,
        }),
    };
}
