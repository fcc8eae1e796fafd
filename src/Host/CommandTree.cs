using System.CommandLine;
using Slantwise.Host.Commands;
using Slantwise.Host.Words;

namespace Slantwise.Host;

/// <summary>All commands.</summary>
internal static class CommandTree
{
    public static RootCommand Of(GlobalOptions options)
    {
        var root = new RootCommand(HostWords.Say("RootHelp"))
        {
            ServeCommand.Of(options),
            Group("import", ImportRosterCommand.Of(options)),
            Group("sheet", SheetPrintCommand.Of(options), SheetReadCommand.Of(options)),
            Group("entries", EntriesAddCommand.Of(options)),
            EvidenceCommand.Of(options),
            ReachCommand.Of(options),
            PlanCommand.Of(options),
            Group("tasks", TasksListCommand.Of(options), TasksCheckCommand.Of(options), TasksExportCommand.Of(options)),
            PostureCommand.Of(options),
            FigureCommand.Of(options),
            FitCommand.Of(options),
            AgreementCommand.Of(options),
            SurvivalCommand.Of(options),
            CalibrationCommand.Of(options),
            Group("list", ListClassesCommand.Of(options), ListLessonsCommand.Of(options)),
            BackupCommand.Of(options),
            RestoreCommand.Of(options),
            Group("demo", DemoLoadCommand.Of(options), DemoSimulateCommand.Of(options)),
        };
        options.AddTo(root);
        return root;
    }

    private static Command Group(string name, params Command[] commands)
    {
        var group = new Command(name, HostWords.Say(char.ToUpperInvariant(name[0]) + name[1..] + "Help"));
        foreach (var command in commands) group.Add(command);
        return group;
    }
}
