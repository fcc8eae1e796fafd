using System.CommandLine;
using System.Globalization;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;

namespace Slantwise.Host.Commands;

/// <summary><c>list lessons</c>: with the ids that other commands take.</summary>
internal static class ListLessonsCommand
{
    public static Command Of(GlobalOptions options)
    {
        var command = new Command("lessons", HostWords.Say("ListLessonsHelp"));
        command.SetAction(async (parsed, cancel) =>
        {
            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            var school = await open.SchoolAsync(cancel);
            var classes = (await open.Store.ListClassesAsync(school.Id, cancel)).ToDictionary(c => c.Id, c => c.Name);
            var rows = (await open.Store.ListLessonsAsync(school.Id, cancel))
                .Select(l => new { id = l.Id, date = l.Date, className = classes.GetValueOrDefault(l.ClassId, ""), title = l.Title, sheetVersion = l.SheetVersion })
                .ToList();
            var words = rows.Count == 0
                ? HostWords.Say("NoLesson")
                : string.Join(Environment.NewLine, rows.Select(r =>
                    $"{r.date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}\t{r.className}\t{r.title}\t{r.id}"));
            Answer.Say(parsed, options, words, new { school = school.Name, lessons = rows });
            return 0;
        });
        return command;
    }
}
