using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Host.Printing;
using Slantwise.Host.Words;
using Slantwise.Records;
using Slantwise.Records.Checks;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Host.Commands;

/// <summary><c>sheet print</c>: a lesson's sheets as a PDF. What is printed is frozen first.</summary>
internal static class SheetPrintCommand
{
    public static Command Of(GlobalOptions options)
    {
        var pick = new LessonPick();
        var output = new Option<string>("--output", "-o") { Description = HostWords.Say("OptionOutput"), HelpName = "FILE", Required = true };
        var kind = new Option<string>("--kind") { Description = HostWords.Say("OptionKind"), DefaultValueFactory = _ => "sheets" };
        kind.AcceptOnlyFromAmong([.. Enum.GetNames<PrintKind>().Select(name => name.ToLowerInvariant())]);
        var flags = new PaperFlags();
        var command = new Command("print", HostWords.Say("SheetPrintHelp")) { output, kind };
        flags.AddTo(command);
        pick.AddTo(command);
        command.SetAction(async (parsed, cancel) =>
        {
            var paper = flags.Of(parsed);
            var target = Path.GetFullPath(parsed.GetRequiredValue(output));
            if (Directory.Exists(target)) throw Refusal.Of("TargetIsAFolder", target);

            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var lesson = await pick.LessonAsync(parsed, open.Store, school, isWritten: false, cancel);
            lesson = await PreparedAsync(open.Store, school, lesson, cancel);
            var record = await open.RecordAsync(lesson, cancel);

            var what = Enum.Parse<PrintKind>(parsed.GetValue(kind)!, ignoreCase: true);
            var plans = await LessonAround.LoadAsync(open.Store, record, what, cancel);
            var pages = LessonPrint.Pages(record, plans, what, paper);
            if (pages.Count == 0) throw Refusal.Of("PrintNoPupils");
            await LessonPrint.KeepLayoutsAsync(open.Store, record, pages, cancel);
            await File.WriteAllBytesAsync(target, LessonPrint.Pdf(pages, record, what, paper.Language), cancel);
            Answer.Say(
                parsed,
                options,
                HostWords.Say("Printed", target, pages.Count, record.Class.Name, HostWords.Day(lesson.Date), record.Sheet!.Version),
                new { file = target, pageCount = pages.Count, lessonId = lesson.Id, className = record.Class.Name, date = lesson.Date, sheetVersion = record.Sheet.Version });
            return 0;
        });
        return command;
    }

    // What goes on paper must be what the results are read against: a sheet is frozen before its first page is made.
    private static async Task<Lesson> PreparedAsync(IStore store, School school, Lesson lesson, CancellationToken cancel)
    {
        if (lesson.SheetVersion is not null) return lesson;
        if (lesson.SheetId is not { } sheetId || await store.FindSheetAsync(school.Id, sheetId, cancel) is not { } sheet) throw Refusal.Of("LessonWithoutSheet");
        var refused = SheetCheck.Of(sheet.Draft, school.Policy).Where(f => f.IsRefused).ToList();
        if (refused.Count > 0) throw new Refusal(HostWords.Say("SheetRefused", sheet.Name)) { Details = FindingLines.Of(refused) };
        var version = await store.FreezeSheetAsync(school.Id, sheetId, cancel);
        var prepared = lesson with { SheetVersion = version.Version };
        await store.SaveLessonAsync(prepared, cancel);
        return prepared;
    }
}
