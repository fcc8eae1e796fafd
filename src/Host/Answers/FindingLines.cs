using System.Globalization;
using Slantwise.Records.Checks;

namespace Slantwise.Host.Answers;

/// <summary>Findings as a command says them.</summary>
internal static class FindingLines
{
    public static IReadOnlyList<string> Of(IEnumerable<Finding> findings) =>
        findings.Select(f => f.Sentence(CultureInfo.CurrentUICulture)).ToList();

    /// <summary>Findings for a program: what they are and where.</summary>
    public static IReadOnlyList<object> ToJson(IEnumerable<Finding> findings) => findings.Select(f => (object)new
    {
        severity = f.Severity,
        key = f.Key,
        sentence = f.Sentence(CultureInfo.CurrentUICulture),
        file = f.InFile?.File,
        line = f.InFile?.LineNumber,
        column = f.InFile?.Column,
    }).ToList();

    /// <summary>Says what was pointed out but taken, beside the answer.</summary>
    public static void Point(IEnumerable<Finding> findings, bool isJson)
    {
        if (isJson) return;
        foreach (var line in Of(findings)) Console.Error.WriteLine(line);
    }
}
