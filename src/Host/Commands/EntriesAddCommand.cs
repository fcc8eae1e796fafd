using System.CommandLine;
using System.Text;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Csv;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;

namespace Slantwise.Host.Commands;

/// <summary><c>entries add FILE</c>: a lesson's results from a table or from JSON lines; <c>-</c> takes JSON lines as they come.</summary>
internal static class EntriesAddCommand
{
    private const string FromStandardInput = "-";

    public static Command Of(GlobalOptions options)
    {
        var pick = new LessonPick();
        var file = new Argument<string>("FILE") { Description = HostWords.Say("EntriesFile") };
        var skipsBad = new Option<bool>("--skip-bad") { Description = HostWords.Say("OptionSkipBad") };
        var command = new Command("add", HostWords.Say("EntriesAddHelp")) { file, skipsBad };
        pick.AddTo(command);
        command.SetAction(async (parsed, cancel) =>
        {
            if (parsed.GetValue(pick.Lesson) is null) throw Refusal.Of("LessonNeeded");
            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var lesson = await pick.LessonAsync(parsed, open.Store, school, isWritten: false, cancel);
            var record = await open.RecordAsync(lesson, cancel);

            var path = parsed.GetRequiredValue(file);
            if (path == FromStandardInput)
            {
                using var input = new StreamReader(Console.OpenStandardInput(), Encoding.UTF8);
                await using var output = new StreamWriter(Console.OpenStandardOutput(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
                var refusedCount = await new EntryStream(open.Store, record, input, output).RunAsync(cancel);
                if (refusedCount > 0) throw new Refusal(HostWords.SayCount("LinesRefused", refusedCount));
                return 0;
            }

            var text = DecodedText.Read(await TextFile.ReadAsync(path, cancel)).Text;
            var reading = EntryFile.Read(Path.GetFileName(path), text, record, EntryStream.RecorderFor(record));
            if (!reading.CanAppend && !parsed.GetValue(skipsBad))
            {
                throw new Refusal(HostWords.Say("EntriesRefused", reading.RefusedRowCount, reading.RowCount))
                {
                    Details = FindingLines.Of(reading.Findings.Where(f => f.IsRefused)),
                };
            }
            var outcome = reading.Entries.Count == 0 ? new AppendOutcome([], 0) : await open.Store.AppendEntriesAsync(school.Id, reading.Entries, cancel);
            FindingLines.Point(reading.Findings, parsed.GetValue(options.Json));
            Answer.Say(
                parsed,
                options,
                HostWords.Say("EntriesAdded", outcome.AddedIds.Count, reading.RowCount - reading.RefusedRowCount, reading.RefusedRowCount),
                new
                {
                    lessonId = lesson.Id,
                    addedCount = outcome.AddedIds.Count,
                    rowCount = reading.RowCount,
                    refusedRowCount = reading.RefusedRowCount,
                    findings = FindingLines.ToJson(reading.Findings),
                });
            return 0;
        });
        return command;
    }
}
