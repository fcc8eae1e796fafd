using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Records.Checks;

namespace Slantwise.Host.Studies;

/// <summary>Says what a study found, and beside it what was passed over.</summary>
internal static class StudyAnswer
{
    /// <summary>Says one of the two; only that one is made.</summary>
    public static void Say(ParseResult parsed, GlobalOptions options, IEnumerable<Finding> notes, Func<IEnumerable<string>> lines, Func<object> json)
    {
        var isJson = parsed.GetValue(options.Json);
        FindingLines.Point(notes, isJson);
        Answer.Say(parsed, options, isJson ? "" : string.Join('\n', lines()), isJson ? json() : "");
    }
}
