using System.CommandLine;
using System.Globalization;
using System.Text;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;

namespace Slantwise.Host.Commands;

/// <summary><c>plan</c>: a lesson's time and mats in numbers, before it is taught.</summary>
internal static class PlanCommand
{
    public static Command Of(GlobalOptions options)
    {
        var pick = new LessonPick();
        var tried = new PlanFlags();
        var command = new Command("plan", HostWords.Say("PlanHelp"));
        tried.AddTo(command);
        pick.AddTo(command);
        command.SetAction(async (parsed, cancel) =>
        {
            // What cannot be tried is refused before anything is looked for.
            tried.Of(parsed, PlanningChoice.Usual);
            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var lesson = await pick.LessonAsync(parsed, open.Store, school, isWritten: false, cancel);
            var record = await open.RecordAsync(lesson, cancel);
            var culture = CultureInfo.CurrentUICulture;
            if (LessonPlanning.ProblemOf(record) is { } problem) throw new Refusal(PlanningWords.Text("Problem" + problem, culture));
            var sheet = record.Sheet?.Content ?? (lesson.SheetId is { } id ? (await open.Store.FindSheetAsync(school.Id, id, cancel))?.Draft : null);
            var planning = LessonPlanning.Of(record, sheet, tried.Of(parsed, lesson.Practice ?? PlanningChoice.Usual));
            var reading = PlanningReading.Of(planning, culture);
            Answer.Say(parsed, options, Lines(record, reading), Json(record, planning, reading));
            return 0;
        });
        return command;
    }

    private static string Lines(LessonRecord record, PlanningReading reading)
    {
        var text = new StringBuilder();
        text.AppendLine(string.Join(" · ", new[] { record.Class.Name, HostWords.Day(record.Lesson.Date), record.Lesson.Title }.Where(t => t.Length > 0)));
        foreach (var warning in reading.Warnings) text.AppendLine(warning.Sentence);
        text.AppendLine();
        foreach (var answer in reading.Answers) text.AppendLine(answer);
        text.AppendLine().AppendLine(reading.Talk);
        foreach (var share in reading.Shares) text.AppendLine($"  {share.Name}: {share.Time}. {share.Orientation}".TrimEnd());
        if (reading.Changes.Count > 0) text.AppendLine();
        foreach (var change in reading.Changes) text.AppendLine("  " + change);
        text.AppendLine();
        foreach (var ground in reading.Grounds) text.AppendLine(ground);
        return text.ToString().TrimEnd();
    }

    private static object Json(LessonRecord record, LessonPlanning planning, PlanningReading reading) => new
    {
        lessonId = record.Lesson.Id,
        className = record.Class.Name,
        date = record.Lesson.Date,
        seed = planning.Seed,
        runCount = planning.Ranges.RunCount,
        plannedMats = planning.PlannedMats,
        kept = record.Lesson.Practice,
        choice = planning.Choice,
        plan = planning.Plan,
        outlook = new
        {
            planning.Outlook.FewestTrials,
            planning.Outlook.MostTrials,
            planning.Outlook.MeanTrialsCount,
            planning.Outlook.PerformingFraction,
            planning.Outlook.RoleFraction,
            planning.Outlook.RestingFraction,
            planning.Outlook.WaitingFraction,
            planning.Outlook.CycleS,
            planning.Outlook.LastDoneS,
            planning.Outlook.LeftS,
            cautions = planning.Outlook.Cautions.ToString(),
        },
        ranges = new { planning.Ranges.FewestTrials, planning.Ranges.MiddleTrials, planning.Ranges.MostTrials, planning.Ranges.WaitingFraction, planning.Ranges.LastDoneS, planning.Ranges.InTimeRuns },
        endS = planning.EndS,
        lastDoneS = planning.LastDoneS,
        lastDoneRange = planning.LastDoneRange,
        talkS = planning.TalkS,
        pupilsAMat = planning.PupilsAMat,
        answers = new { tries = reading.Tries, waiting = reading.Waiting, lastDone = reading.LastDone, more = reading.More },
        warnings = reading.Warnings,
        changes = planning.More.Single.Concat(planning.More.Pairs).Zip(reading.Changes, (change, sentence) => new
        {
            matCount = change.Plan.MatCount,
            gainTrials = change.GainTrials,
            fewestTrials = change.Outlook.FewestTrials,
            waitingFraction = change.Outlook.WaitingFraction,
            addedMats = change.AddedMats,
            addedSideStations = change.AddedSideStations,
            cutTalkS = change.CutTalkS,
            cutSets = change.CutSets,
            addedTrialsATurn = change.AddedTrialsATurn,
            isObserverNew = change.IsObserverNew,
            sentence,
        }),
        talk = reading.Talk,
        blocks = planning.Blocks.Blocks,
        shares = planning.Blocks.Shares.Zip(reading.Shares, (share, words) => new
        {
            category = share.Category,
            timeS = share.TimeS,
            shareFraction = share.ShareFraction,
            orientation = share.Orientation is { } value ? new { lowFraction = value.LowFraction, highFraction = value.HighFraction, source = value.Source, sentence = words.Orientation } : null,
        }),
        grounds = reading.Grounds,
    };
}
