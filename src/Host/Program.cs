using System.CommandLine;
using System.CommandLine.Invocation;
using Slantwise.Host.Answers;
using Slantwise.Host.Commands;

namespace Slantwise.Host;

/// <summary>The one program: reads the command line, runs a command, and turns any failure into a line and an exit code.</summary>
internal static class Program
{
    private static async Task<int> Main(string[] args)
    {
        using var interrupts = new Interrupts();
        var options = new GlobalOptions();
        var parsed = CommandTree.Of(options).Parse(args);
        try
        {
            if (parsed.Action is ParseErrorAction) throw UsageRefusal.Of(parsed);
            return await parsed.InvokeAsync(
                new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null }, interrupts.Asked);
        }
        catch (Exception failure)
        {
            return ErrorWords.Write(failure, isJson: args.Contains(options.Json.Name), Console.Error);
        }
    }
}
