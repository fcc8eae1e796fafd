using System.CommandLine;
using System.Globalization;
using System.Text;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Checks;
using Slantwise.Records.Tasks.Checks;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Host.Commands;

/// <summary><c>tasks check DIR</c>: what a folder of movement tasks lacks, file by file.</summary>
internal static class TasksCheckCommand
{
    public static Command Of(GlobalOptions options)
    {
        var folder = new Argument<string>("DIR") { Description = HostWords.Say("ArgumentTasksFolder") };
        var command = new Command("check", HostWords.Say("TasksCheckHelp")) { folder };
        command.SetAction(async (parsed, cancel) =>
        {
            var readings = TaskFolder.Read(await TextsAsync(parsed.GetRequiredValue(folder), cancel));
            if (readings.Count == 0) throw Refusal.Of("NoTasks", parsed.GetRequiredValue(folder));
            var findings = DesignCheck.Of(readings);
            Answer.Say(parsed, options, Lines(readings.Count, findings), new
            {
                taskCount = readings.Count,
                findings = findings.Select(f => new
                {
                    severity = f.Severity,
                    key = f.Key,
                    file = f.Arguments[0].ToString(),
                    part = f.Arguments.ElementAtOrDefault(1) as string,
                    sentence = f.Sentence(CultureInfo.CurrentUICulture),
                }),
            });
            return findings.Count == 0 ? 0 : 1;
        });
        return command;
    }

    private static string Lines(int taskCount, IReadOnlyList<Finding> findings)
    {
        var text = new StringBuilder();
        foreach (var finding in findings) text.AppendLine(finding.Sentence(CultureInfo.CurrentUICulture));
        return text.Append(HostWords.SayCount("TasksChecked", taskCount)).Append(' ').Append(HostWords.SayCount("TasksFindings", findings.Count)).ToString();
    }

    private static async Task<IReadOnlyDictionary<string, string>> TextsAsync(string folder, CancellationToken cancel)
    {
        if (!Directory.Exists(folder)) throw Refusal.Of("NoFolder", folder);
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(folder, "*.json", SearchOption.AllDirectories))
        {
            texts[Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/')] =
                Encoding.UTF8.GetString(await TextFile.ReadAsync(file, cancel)).TrimStart('\uFEFF');
        }
        return texts;
    }
}
