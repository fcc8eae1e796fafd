using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records;
using Slantwise.Records.Simulation;

namespace Slantwise.Host.Commands;

/// <summary><c>demo load</c>: the invented school, into an empty store.</summary>
internal static class DemoLoadCommand
{
    // Any seed would do; this one is kept so that docs and pictures show the school a reader finds.
    private const ulong Seed = 7;

    public static Command Of(GlobalOptions options)
    {
        var command = new Command("load", HostWords.Say("DemoLoadHelp"));
        command.SetAction(async (parsed, cancel) =>
        {
            await using var open = await OpenStore.MakeAsync(parsed, options, cancel);
            if (await LoadAsync(open.Store, cancel) is not { } demo) throw Refusal.Of("DemoNeedsEmpty", open.Folder.FullPath);
            Answer.Say(
                parsed,
                options,
                HostWords.Say("DemoLoaded", demo.School.Name, demo.Classes.Count, demo.Pupils.Count, demo.Lessons.Count),
                new { school = demo.School.Name, classCount = demo.Classes.Count, pupilCount = demo.Pupils.Count, lessonCount = demo.Lessons.Count });
            return 0;
        });
        return command;
    }

    /// <summary>Loads the invented school, or goes on where an interrupted loading stopped.</summary>
    /// <returns>None, and nothing is written, if the store holds this school completely, or another one.</returns>
    public static async Task<DemoSchool?> LoadAsync(IStore store, CancellationToken cancel)
    {
        var demo = DemoSchool.Of(Seed, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));
        var schools = await store.ListSchoolsAsync(cancel);
        if (schools.Any(s => s.Id != demo.School.Id)) return null;
        return await demo.SaveToAsync(store, cancel) ? demo : null;
    }
}
