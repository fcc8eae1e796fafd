using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Slantwise.Records.Csv;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Lessons;
using static Slantwise.Desk.Words.FloorWords;

namespace Slantwise.Desk.Pages.Floor;

/// <summary>Brings back the entries that tablets saved to files: reading, a look, taking.</summary>
public partial class EntryFiles
{
    // A class of 30 in a lesson of three tasks makes about 5,000 entries of 400 bytes.
    private const int FileBytes = 16 * 1024 * 1024;
    private const int FileCount = 40;
    private const int ShownCount = 40;

    private IReadOnlyList<EntryReading>? _readings;
    private bool _isReading;
    private int _round;
    private int? _takenCount;
    private string? _failure;

    /// <summary>The lesson.</summary>
    [Parameter, EditorRequired]
    public LessonRecord Record { get; set; } = null!;

    /// <summary>After entries were taken.</summary>
    [Parameter]
    public EventCallback OnTaken { get; set; }

    [Inject]
    private DeskSchool Desk { get; set; } = null!;

    private int NewCount => _readings?.Sum(r => r.Entries.Count) ?? 0;

    private async Task ReadAsync(InputFileChangeEventArgs chosen)
    {
        (_readings, _takenCount, _failure) = (null, null, null);
        if (chosen.FileCount > FileCount)
        {
            _failure = Say("BackTooMany", FileCount);
            return;
        }
        var files = chosen.GetMultipleFiles(FileCount);
        if (files.FirstOrDefault(f => f.Size > FileBytes) is { } large)
        {
            _failure = Say("BackTooLarge", large.Name, FileBytes / 1024 / 1024);
            return;
        }
        _isReading = true;
        _failure = await Desk.TryAsync(async () => _readings = await ReadAsync(files));
        _isReading = false;
    }

    private async Task<IReadOnlyList<EntryReading>> ReadAsync(IReadOnlyList<IBrowserFile> files)
    {
        // With what has come in since the page was opened, and each file with those before it.
        var record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, Record.Lesson.Id) ?? Record;
        var readings = new List<EntryReading>();
        foreach (var file in files)
        {
            using var bytes = new MemoryStream();
            await using (var stream = file.OpenReadStream(FileBytes)) await stream.CopyToAsync(bytes);
            var text = DecodedText.Read(bytes.ToArray()).Text;
            var recorder = new Recorder(Desk.SchoolId, record.Lesson.Id, EntrySource.File, "desk", Desk.Clock, record.Entries);
            var reading = EntryFile.Read(file.Name, text, record, recorder);
            readings.Add(reading);
            record = record with { Entries = [.. record.Entries, .. reading.Entries] };
        }
        return readings;
    }

    private async Task TakeAsync()
    {
        var entries = _readings!.SelectMany(r => r.Entries).ToList();
        _failure = await Desk.TryAsync(async () => _takenCount = (await Desk.Store.AppendEntriesAsync(Desk.SchoolId, entries)).AddedIds.Count);
        if (_failure is not null) return;
        Forget();
        await OnTaken.InvokeAsync();
    }

    // A browser says nothing when the file that is chosen is the one that was chosen before: each round has a field of its own.
    private void Forget()
    {
        _readings = null;
        _round++;
    }
}
