using System.CommandLine;
using System.Globalization;
using System.Text;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Words;

namespace Slantwise.Host.Commands;

/// <summary><c>tasks list</c>: the tasks that come with the program, by pattern.</summary>
internal static class TasksListCommand
{
    public static Command Of(GlobalOptions options)
    {
        var command = new Command("list", HostWords.Say("TasksListHelp"));
        command.SetAction(parsed =>
        {
            var tasks = TaskLibrary.Readings.Where(r => r.Design is not null)
                .Select(r => (Key: Path.GetFileNameWithoutExtension(r.FileName), Design: r.Design!))
                .OrderBy(t => t.Design.Pattern).ThenBy(t => t.Key, StringComparer.Ordinal).ToList();
            Answer.Say(parsed, options, Lines(tasks), new
            {
                tasks = tasks.Select(t => new
                {
                    key = t.Key,
                    id = t.Design.Id,
                    name = NameOf(t.Design),
                    pattern = t.Design.Pattern,
                    supports = t.Design.Supports,
                    levelCount = t.Design.Levels.Count,
                    needs = t.Design.Needs,
                }),
            });
            return 0;
        });
        return command;
    }

    private static string Lines(IReadOnlyList<(string Key, TaskDesign Design)> tasks)
    {
        var text = new StringBuilder();
        foreach (var pattern in tasks.GroupBy(t => t.Design.Pattern))
        {
            text.AppendLine(TaskTerms.Of(pattern.Key, CultureInfo.CurrentUICulture));
            foreach (var (key, design) in pattern) text.AppendLine(CultureInfo.InvariantCulture, $"  {key,-24} {NameOf(design)}");
        }
        return text.Append(HostWords.SayCount("TasksChecked", tasks.Count)).ToString();
    }

    private static string NameOf(TaskDesign design) => design.ToTask(CultureInfo.CurrentUICulture.TwoLetterISOLanguageName, Guid.Empty).Name;
}
