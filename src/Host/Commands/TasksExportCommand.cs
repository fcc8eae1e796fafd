using System.CommandLine;
using System.Text;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Tasks.Own;

namespace Slantwise.Host.Commands;

/// <summary><c>tasks export KEY</c>: one task of the library with all its words as one file to read, change or hand on; with <c>--own FOLDER</c> the school's own tasks, a file each.</summary>
internal static class TasksExportCommand
{
    public static Command Of(GlobalOptions options)
    {
        var key = new Argument<string?>("KEY") { Description = HostWords.Say("ArgumentTaskKey"), Arity = ArgumentArity.ZeroOrOne };
        var output = new Option<string?>("--output", "-o") { Description = HostWords.Say("OptionTaskOutput"), HelpName = "FILE" };
        var own = new Option<string?>("--own") { Description = HostWords.Say("OptionTaskOwn"), HelpName = "FOLDER" };
        var command = new Command("export", HostWords.Say("TasksExportHelp")) { key, output, own };
        command.SetAction(async (parsed, cancel) =>
        {
            var named = parsed.GetValue(key);
            if (parsed.GetValue(own) is { } folder) await WriteOwnAsync(parsed, options, named, folder, cancel);
            else await WriteAsync(parsed, options, named ?? throw Refusal.Of("TaskKeyMissing"), parsed.GetValue(output), cancel);
            return 0;
        });
        return command;
    }

    private static async Task WriteAsync(ParseResult parsed, GlobalOptions options, string named, string? file, CancellationToken cancel)
    {
        var design = TaskLibrary.Readings.FirstOrDefault(r => Path.GetFileNameWithoutExtension(r.FileName) == named)?.Design
            ?? throw Refusal.Of("NoTask", named);
        var text = DesignFile.Write(design);
        if (file is null)
        {
            Console.Out.Write(text);
            return;
        }
        await File.WriteAllTextAsync(file, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), cancel);
        Answer.Say(parsed, options, HostWords.Say("TaskExported", file), new { file, key = named, id = design.Id });
    }

    private static async Task WriteOwnAsync(ParseResult parsed, GlobalOptions options, string? named, string folder, CancellationToken cancel)
    {
        await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
        var school = await open.SchoolAsync(cancel);
        var tasks = (await OwnTask.ListAsync(open.Store, school.Id, cancel))
            .Where(t => named is null || string.Equals(t.Task.Name, named, StringComparison.OrdinalIgnoreCase) || t.Task.Id.ToString().StartsWith(named, StringComparison.OrdinalIgnoreCase))
            .ToList();
        if (named is not null && tasks.Count == 0) throw Refusal.Of("NoOwnTask", named);
        Directory.CreateDirectory(folder);
        var files = new List<(string Name, OwnTask Task)>();
        foreach (var task in tasks)
        {
            // Two tasks may have one name: the second is told by its id.
            var name = TaskFileName.Of(task.Task.Name);
            if (files.Any(f => f.Name == name)) name = $"{Path.GetFileNameWithoutExtension(name)}-{task.Task.Id}.json";
            files.Add((name, task));
            await File.WriteAllTextAsync(Path.Combine(folder, name), task.ToFile(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), cancel);
        }
        Answer.Say(parsed, options, HostWords.SayCount("TasksExported", files.Count, folder), new
        {
            folder,
            tasks = files.Select(f => new { file = f.Name, id = f.Task.Task.Id, name = f.Task.Task.Name, hasGrid = f.Task.Design is not null }),
        });
    }
}
