using Slantwise.Records.Csv;
using Slantwise.Records.Checks;

namespace Slantwise.Records.Roster;

/// <summary>Reads roster files: plain tables, or the OneRoster 1.2 set.</summary>
/// <remarks>
/// Plain tables have a heading line; columns in any order, in English or Spanish; separated by commas, semicolons or tabs.
/// Of the OneRoster set <c>users.csv</c>, <c>classes.csv</c> and <c>enrollments.csv</c> are needed, <c>roles.csv</c> and <c>manifest.csv</c> are read, others are passed over.
/// Source: [OneRoster2022] tables of the CSV binding; [RFC4180] section 2.
/// </remarks>
public static class RosterFiles
{
    /// <summary>Reads files that belong together.</summary>
    /// <param name="files">One file or more, in any order.</param>
    /// <returns>The good rows and every finding with its file, line and column. Bad text is a finding, never an exception.</returns>
    public static RosterReading Read(IReadOnlyList<RosterFile> files)
    {
        if (files.Count == 0) return new() { Findings = [Finding.Refused("RosterHasNoFile")] };
        var findings = new List<Finding>();
        foreach (var file in files.Where(f => f.IsGuessed)) findings.Add(Finding.Flagged("FileEncodingGuessed", new FilePlace(file.Name)));
        var tables = files.Select(f => CsvTable.Read(f.Name, f.Text)).ToList();
        return tables.Any(OneRosterFiles.IsPartOfSet)
            ? OneRosterFiles.Read(tables, findings)
            : PlainRosterFiles.Read(tables, findings);
    }
}
