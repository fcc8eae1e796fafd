using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Host.Reading;
using Slantwise.Host.Words;
using Slantwise.Paper.Reading;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Commands;

/// <summary><c>sheet read FILES</c>: marks of photographed or scanned sheets become entries; what is doubtful waits for a person.</summary>
internal static class SheetReadCommand
{
    public static Command Of(GlobalOptions options)
    {
        var pick = new LessonPick();
        var files = new Argument<string[]>("FILES") { Description = HostWords.Say("SheetReadFiles"), Arity = ArgumentArity.ZeroOrMore };
        var reviewOut = new Option<string?>("--review-out") { Description = HostWords.Say("OptionReviewOut"), HelpName = "DIR" };
        var isDry = new Option<bool>("--dry-run") { Description = HostWords.Say("OptionDryRead") };
        var watched = new Option<string?>("--watch") { Description = HostWords.Say("OptionWatch"), HelpName = "DIR" };
        var command = new Command("read", HostWords.Say("SheetReadHelp")) { files, reviewOut, isDry, watched };
        pick.AddTo(command);
        command.SetAction(async (parsed, cancel) =>
        {
            var paths = parsed.GetValue(files) ?? [];
            var folder = parsed.GetValue(watched);
            if (paths.Length == 0 && folder is null) throw Refusal.Of("NothingToRead");
            if (paths.FirstOrDefault(p => !File.Exists(p)) is { } missing) throw Refusal.Of("NoFile", missing);
            if (folder is not null && !Directory.Exists(folder)) throw Refusal.Of("NoFolder", folder);

            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var isNamed = parsed.GetValue(pick.Lesson) is not null || parsed.GetValue(pick.Class) is not null;
            var lesson = isNamed ? await pick.LessonAsync(parsed, open.Store, school, isWritten: false, cancel) : null;
            var intake = new PileIntake(open.Store, new PageReader(new ReadingLimits()), school.Id, TimeProvider.System);
            var how = new IntakeOptions { LessonId = lesson?.Id, IsDryRun = parsed.GetValue(isDry) };
            var names = await PageNames.LoadAsync(open.Store, school.Id, cancel);
            var isJson = parsed.GetValue(options.Json);
            var crops = parsed.GetValue(reviewOut) is { } target ? new CropFolder(Path.GetFullPath(target)) : null;

            if (folder is not null)
            {
                // A line a page, as it comes: whoever watches the folder watches the answers too.
                await foreach (var batch in WatchedFolder.FilesAsync(Path.GetFullPath(folder), paths, cancel))
                {
                    await foreach (var page in intake.TakeAsync(batch, how, cancel))
                    {
                        crops?.Write(page, names);
                        Console.Out.WriteLine(isJson ? Answer.ToJson(PageJson.Of(page, names)) : string.Join('\n', PageLines.Of(page, names)));
                    }
                }
                return 0;
            }

            var summary = new PileSummary();
            var pages = new List<object>();
            await foreach (var page in intake.TakeAsync(paths.Select(WatchedFolder.FileOf), how, cancel))
            {
                crops?.Write(page, names);
                summary.Add(page);
                if (isJson) pages.Add(PageJson.Of(page, names));
                else foreach (var line in PageLines.Of(page, names)) Console.Out.WriteLine(line);
            }
            Answer.Say(parsed, options, summary.Sentence(how.IsDryRun), new
            {
                pages,
                isDryRun = how.IsDryRun,
                addedCount = summary.AddedCount,
                waitingCount = summary.WaitingCount,
                unreadCount = summary.UnreadCount,
            });
            // As with the other commands: input none of which could be taken is bad input.
            if (summary is { ReadCount: 0, UnreadCount: > 0 }) throw new Refusal(HostWords.SayCount("PagesUnread", summary.UnreadCount));
            return 0;
        });
        return command;
    }
}
