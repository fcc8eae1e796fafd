using System.CommandLine;
using System.Text;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Simulation;

namespace Slantwise.Host.Commands;

/// <summary><c>demo simulate</c>: an invented class of any size as files, with what is true behind its entries.</summary>
internal static class DemoSimulateCommand
{
    private const int MostPupils = 100_000;
    private const int MostLessons = 200;

    // A day and not today: the same options give the same files whenever they are run.
    private static readonly DateOnly FirstDay = new(2026, 9, 7);

    public static Command Of(GlobalOptions options)
    {
        var pupils = new Option<int>("--pupils") { Description = HostWords.Say("OptionPupils"), HelpName = "N", DefaultValueFactory = _ => 28 };
        var lessons = new Option<int>("--lessons") { Description = HostWords.Say("OptionLessons"), HelpName = "N", DefaultValueFactory = _ => 5 };
        var seed = new Option<ulong>("--seed") { Description = HostWords.Say("OptionSeed"), HelpName = "N", DefaultValueFactory = _ => 1 };
        var folder = new Option<string>("--out") { Description = HostWords.Say("OptionOut"), HelpName = "FOLDER", Required = true };
        var command = new Command("simulate", HostWords.Say("DemoSimulateHelp")) { pupils, lessons, seed, folder };
        command.SetAction(async (parsed, cancel) =>
        {
            var (pupilCount, lessonCount) = (parsed.GetValue(pupils), parsed.GetValue(lessons));
            if (pupilCount is < 1 or > MostPupils) throw Refusal.Of("SimulatePupils", pupilCount, MostPupils);
            if (lessonCount is < 1 or > MostLessons) throw Refusal.Of("SimulateLessons", lessonCount, MostLessons);
            var target = Path.GetFullPath(parsed.GetRequiredValue(folder));
            Directory.CreateDirectory(target);

            var simulated = ClassSimulator.Run(InventedUnit.PlanFor(parsed.GetValue(seed), pupilCount, lessonCount, FirstDay));
            var files = SimulationFiles.Of(simulated);
            foreach (var (name, text) in files)
                await File.WriteAllTextAsync(Path.Combine(target, name), text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), cancel);
            Answer.Say(
                parsed,
                options,
                HostWords.Say("Simulated", pupilCount, lessonCount, simulated.Entries.Count, target, string.Join(", ", files.Keys)),
                new { folder = target, files = files.Keys, pupilCount, lessonCount, entryCount = simulated.Entries.Count });
            return 0;
        });
        return command;
    }
}
