using System.CommandLine;
using Slantwise.Host.Words;

namespace Slantwise.Host.Answers;

/// <summary>What is wrong with a command line, in one line.</summary>
internal static class UsageRefusal
{
    public static Refusal Of(ParseResult parsed)
    {
        // The command as far as it was understood, so that the hint leads to the right help.
        var names = new List<string>();
        for (var at = parsed.CommandResult; at.Parent is System.CommandLine.Parsing.CommandResult parent; at = parent) names.Insert(0, at.Command.Name);
        var command = string.Join(' ', names.Prepend("slantwise"));
        var said = ErrorWords.OneLine(string.Join(' ', parsed.Errors.Select(e => e.Message).Distinct()));
        return Refusal.Of("UsageWrong", said, command);
    }
}
