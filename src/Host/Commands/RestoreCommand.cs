using System.CommandLine;
using System.Globalization;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;

namespace Slantwise.Host.Commands;

/// <summary><c>restore FILE</c>: puts a backup in the place of everything there is, after putting that aside.</summary>
internal static class RestoreCommand
{
    public static Command Of(GlobalOptions options)
    {
        var file = new Argument<string>("FILE") { Description = HostWords.Say("RestoreFile") };
        var command = new Command("restore", HostWords.Say("RestoreHelp")) { file };
        command.SetAction(async (parsed, cancel) =>
        {
            var source = Path.GetFullPath(parsed.GetRequiredValue(file));
            if (!File.Exists(source)) throw Refusal.Of("NoFile", source);
            // A desk that goes on serving would show pages of the school that was.
            using var alone = OpenStore.IsPostgres(parsed, options) ? null : DataFolder.Of(parsed, options).Lock();
            await using var open = await OpenStore.MakeAsync(parsed, options, cancel);
            var aside = await PutAsideAsync(open, cancel);
            try
            {
                await open.Store.RestoreAsync(source, cancel);
            }
            catch (InvalidDataException failure)
            {
                if (aside is not null) File.Delete(aside);
                throw Refusal.Of("NotABackup", source, ErrorWords.OneLine(failure.Message));
            }
            var words = aside is null ? HostWords.Say("RestoreDone", source) : HostWords.Say("RestoreDoneAside", source, aside);
            Answer.Say(parsed, options, words, new { file = source, before = aside });
            return 0;
        });
        return command;
    }

    private static async Task<string?> PutAsideAsync(OpenStore open, CancellationToken cancel)
    {
        if ((await open.Store.ListSchoolsAsync(cancel)).Count == 0) return null;
        open.Folder.Make();
        var now = TimeProvider.System.GetLocalNow().ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
        var aside = Path.Combine(open.Folder.FullPath, $"before-restore-{now}.slantwise");
        await open.Store.BackupAsync(aside, cancel);
        return aside;
    }
}
