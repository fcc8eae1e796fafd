using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;

namespace Slantwise.Host.Commands;

/// <summary><c>backup FILE</c>: a complete copy in one file, also while the desk is served.</summary>
internal static class BackupCommand
{
    public static Command Of(GlobalOptions options)
    {
        var file = new Argument<string>("FILE") { Description = HostWords.Say("BackupFile") };
        var command = new Command("backup", HostWords.Say("BackupHelp")) { file };
        command.SetAction(async (parsed, cancel) =>
        {
            var target = Path.GetFullPath(parsed.GetRequiredValue(file));
            if (Directory.Exists(target)) throw Refusal.Of("TargetIsAFolder", target);
            await using var open = await OpenStore.OpenAsync(parsed, options, cancel);
            if (target == open.Folder.DatabaseFile) throw Refusal.Of("BackupOntoItself", target);
            await open.Store.BackupAsync(target, cancel);
            var length = new FileInfo(target).Length;
            Answer.Say(parsed, options, HostWords.Say("BackupDone", target, (length + 1023) / 1024), new { file = target, byteCount = length });
            return 0;
        });
        return command;
    }
}
