using System.Text.Json;
using System.Threading.Channels;
using Slantwise.Host.Answers;
using Slantwise.Records;
using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Lessons;

namespace Slantwise.Host;

/// <summary>Takes entries as JSON lines while they come, and answers each line on its own once what it says is durable.</summary>
/// <remarks>
/// The answer to a line is <c>{"added":"id"}</c>, <c>{"known":"id"}</c> for one taken before, or <c>{"refused":"why","line":n}</c>; in the order
/// of the lines. Whoever sends keeps a line until it is answered and sends it again after a failure: taking one twice changes nothing.
/// </remarks>
/// <param name="store">Where entries go.</param>
/// <param name="record">The lesson they are about, with every entry so far.</param>
/// <param name="input">The lines.</param>
/// <param name="output">The answers.</param>
internal sealed class EntryStream(IStore store, LessonRecord record, TextReader input, TextWriter output)
{
    private const string Name = "stdin.jsonl";

    // Lines that came while the last commit was written go into the next one: a slow sender waits for one commit, a fast one shares it.
    private const int MostInOneCommit = 256;

    private LessonRecord _record = record;
    private int _linesBeforeCount;

    /// <summary>Runs until the input ends.</summary>
    /// <returns>How many lines were refused.</returns>
    public async Task<int> RunAsync(CancellationToken cancel)
    {
        var lines = Channel.CreateBounded<string>(4 * MostInOneCommit);
        var reading = ReadAsync(lines.Writer, cancel);
        var refusedCount = 0;
        while (await lines.Reader.WaitToReadAsync(cancel))
        {
            var batch = new List<string>();
            while (batch.Count < MostInOneCommit && lines.Reader.TryRead(out var line)) batch.Add(line);
            refusedCount += await TakeAsync(batch, cancel);
        }
        await reading;
        return refusedCount;
    }

    private async Task ReadAsync(ChannelWriter<string> lines, CancellationToken cancel)
    {
        // Reading a terminal or a pipe blocks, so it has a thread of its own.
        await Task.Run(
            async () =>
            {
                try
                {
                    while (input.ReadLine() is { } line) await lines.WriteAsync(line, cancel);
                }
                finally
                {
                    lines.Complete();
                }
            },
            cancel);
    }

    private async Task<int> TakeAsync(List<string> batch, CancellationToken cancel)
    {
        var reading = EntryFile.Read(Name, string.Join('\n', batch), _record, RecorderFor(_record));
        var outcome = reading.Entries.Count == 0
            ? new AppendOutcome([], 0)
            : await store.AppendEntriesAsync(_record.School.Id, reading.Entries, cancel);
        _record = _record with { Entries = [.. _record.Entries, .. reading.Entries] };

        var added = outcome.AddedIds.ToHashSet();
        var refused = reading.Findings.Where(f => f is { IsRefused: true, InFile.LineNumber: not null }).ToLookup(f => f.InFile!.LineNumber!.Value);
        for (var i = 0; i < batch.Count; i++)
        {
            if (string.IsNullOrWhiteSpace(batch[i])) continue;
            if (refused[i + 1].FirstOrDefault() is { } finding) output.WriteLine(Answer.ToJson(new { refused = Sentence(finding), line = _linesBeforeCount + i + 1 }));
            else if (IdOf(batch[i]) is var id && added.Remove(id)) output.WriteLine(Answer.ToJson(new { added = id }));
            else output.WriteLine(Answer.ToJson(new { known = id }));
        }
        await output.FlushAsync(cancel);
        _linesBeforeCount += batch.Count;
        return reading.RefusedRowCount;
    }

    private string Sentence(Finding finding)
    {
        var arguments = finding.Arguments
            .Select(a => a is FilePlace { LineNumber: { } line } place ? place with { LineNumber = line + _linesBeforeCount } : a)
            .ToArray();
        return FindingLines.Of([finding with { Arguments = arguments }])[0];
    }

    private static Guid IdOf(string line)
    {
        using var json = JsonDocument.Parse(line);
        return json.RootElement.EnumerateObject().First(p => p.Name.Equals("id", StringComparison.OrdinalIgnoreCase)).Value.GetGuid();
    }

    /// <summary>A recorder of this way in, over everything the lesson has.</summary>
    public static Recorder RecorderFor(LessonRecord record) =>
        new(record.School.Id, record.Lesson.Id, EntrySource.File, "command", TimeProvider.System, record.Entries);
}
