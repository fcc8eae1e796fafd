using System.CommandLine;
using System.Globalization;
using Slantwise.Host.Answers;
using Slantwise.Host.Printing;
using Slantwise.Host.Words;
using Slantwise.Paper;
using Slantwise.Records;
using Slantwise.Records.Checks;
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
        var size = new Option<string>("--size") { Description = HostWords.Say("OptionSize"), DefaultValueFactory = _ => "a4" };
        size.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, "a4", "letter");
        var language = new Option<string?>("--lang") { Description = HostWords.Say("OptionLang") };
        language.AcceptOnlyFromAmong("en", "es");
        var kind = new Option<string>("--kind") { Description = HostWords.Say("OptionKind"), DefaultValueFactory = _ => "sheets" };
        kind.AcceptOnlyFromAmong("sheets", "class");
        var spare = new Option<int>("--spare") { Description = HostWords.Say("OptionSpare"), HelpName = "N" };
        var command = new Command("print", HostWords.Say("SheetPrintHelp")) { output, size, language, kind, spare };
        pick.AddTo(command);
        command.SetAction(async (parsed, cancel) =>
        {
            if (parsed.GetValue(spare) is < 0 or > 60) throw Refusal.Of("SpareRange", parsed.GetValue(spare));
            var target = Path.GetFullPath(parsed.GetRequiredValue(output));
            if (Directory.Exists(target)) throw Refusal.Of("TargetIsAFolder", target);

            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var lesson = await pick.LessonAsync(parsed, open.Store, school, isWritten: false, cancel);
            lesson = await PreparedAsync(open.Store, school, lesson, cancel);
            var record = await open.RecordAsync(lesson, cancel);

            var spoken = parsed.GetValue(language) is { } asked ? CultureInfo.GetCultureInfo(asked) : CultureInfo.CurrentUICulture;
            var what = parsed.GetValue(kind) == "class" ? PrintKind.Class : PrintKind.Sheets;
            var paper = new PaperOptions(Enum.Parse<PaperSize>(parsed.GetValue(size)!, ignoreCase: true), spoken) { SpareCount = parsed.GetValue(spare) };
            var pages = LessonPrint.Pages(record, what, paper);
            if (pages.Count == 0) throw Refusal.Of("PrintNoPupils");
            await File.WriteAllBytesAsync(target, LessonPrint.Pdf(pages, record, what, spoken), cancel);
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
