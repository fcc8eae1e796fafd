using System.CommandLine;
using System.Text;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Host.Commands;

/// <summary><c>tasks export KEY</c>: one task of the library with all its words as one file to read, change or hand on.</summary>
internal static class TasksExportCommand
{
    public static Command Of(GlobalOptions options)
    {
        var key = new Argument<string>("KEY") { Description = HostWords.Say("ArgumentTaskKey") };
        var output = new Option<string?>("--output", "-o") { Description = HostWords.Say("OptionTaskOutput"), HelpName = "FILE" };
        var command = new Command("export", HostWords.Say("TasksExportHelp")) { key, output };
        command.SetAction(async (parsed, cancel) =>
        {
            var named = parsed.GetRequiredValue(key);
            var design = TaskLibrary.Readings.FirstOrDefault(r => Path.GetFileNameWithoutExtension(r.FileName) == named)?.Design
                ?? throw Refusal.Of("NoTask", named);
            var text = DesignFile.Write(design);
            if (parsed.GetValue(output) is not { } file) Console.Out.Write(text);
            else
            {
                await File.WriteAllTextAsync(file, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), cancel);
                Answer.Say(parsed, options, HostWords.Say("TaskExported", file), new { file, key = named, id = design.Id });
            }
            return 0;
        });
        return command;
    }
}
