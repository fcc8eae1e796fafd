using Slantwise.Records.Lessons;

namespace Slantwise.Records.Entries.Files;

/// <summary>Entries of a lesson as a file: a table with one row per pupil, task and set, or one entry a line as JSON.</summary>
/// <remarks>
/// The table carries what a pupil writes on a sheet; JSON lines carry everything. Columns in any order, in English or Spanish:
/// <c>pupil</c> (code) · <c>task</c> (number on the sheet, or its name; may be left out where the sheet has one) · <c>set</c> · <c>level</c> (number on the sheet) ·
/// <c>prediction</c> (a count, or <c>4.5s</c>) · <c>trials</c>, separated by spaces, or columns <c>trial1</c>, <c>trial2</c>…: <c>1</c> done, <c>0</c> not, <c>4.2s</c> held 4.2 s
/// (done if that reaches the level's dose), <c>1/4.2s</c> or <c>0/4.2s</c> where tick and time are both given, <c>-</c> not tried ·
/// <c>cues</c>: the ticked numbers, separated by spaces; the others count as left open, except those written <c>?2</c>; <c>-</c> for none ticked ·
/// <c>decision</c> (same, harder, easier) · <c>reason</c>. An empty cell says nothing and takes nothing back.
/// Source: [RFC4180] section 2.
/// </remarks>
public static class EntryFile
{
    /// <summary>Reads a file and compares it with what is known, so that reading it again adds nothing.</summary>
    /// <param name="name">The file's name; <c>.json</c>, <c>.jsonl</c> and <c>.ndjson</c> are JSON lines, as is any text that begins with <c>{</c>.</param>
    /// <param name="text">The whole text.</param>
    /// <param name="record">The lesson the file is about.</param>
    /// <param name="recorder">A recorder over the record's entries. It takes the good rows as said, so use it for one reading.</param>
    /// <returns>The entries to append and every finding with its file, line and column. Bad text is a finding, never an exception.</returns>
    public static EntryReading Read(string name, string text, LessonRecord record, Recorder recorder) =>
        IsJson(name, text) ? EntryJsonLines.Read(name, text, record) : new EntryTable(name, record, recorder).Read(text);

    /// <summary>Writes what holds now as a table that <see cref="Read"/> takes back.</summary>
    /// <param name="record">A lesson with a sheet.</param>
    /// <returns>A heading and a row for each pupil, task and set with something on it; CRLF ends each line. The heading alone where there is nothing.</returns>
    public static string WriteCsv(LessonRecord record) => EntryTableWriter.Write(record);

    /// <summary>Writes entries as JSON lines that <see cref="Read"/> takes back, superseded ones included.</summary>
    /// <param name="entries">Any number, in the order to write them.</param>
    /// <returns>One line an entry, each ended by LF; empty for none.</returns>
    public static string WriteJsonLines(IEnumerable<Entry> entries) => EntryJsonLines.Write(entries);

    private static bool IsJson(string name, string text) =>
        name.EndsWith(".jsonl", StringComparison.OrdinalIgnoreCase)
        || name.EndsWith(".ndjson", StringComparison.OrdinalIgnoreCase)
        || name.EndsWith(".json", StringComparison.OrdinalIgnoreCase)
        || text.AsSpan().TrimStart().StartsWith("{");
}
