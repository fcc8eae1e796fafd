using System.Globalization;
using Microsoft.AspNetCore.Components.Forms;
using Slantwise.Records.Csv;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Own;
using static Slantwise.Desk.Words.LibraryWords;

namespace Slantwise.Desk.Pages.Tasks;

/// <summary>Opens the file of one task: reading, a look, adding.</summary>
public partial class TaskOpening
{
    // A task of the library in two languages takes 12 KB.
    private const int FileBytes = 256 * 1024;
    private const int ShownCount = 40;

    private TaskFileLook? _look;
    private MovementTask? _added;
    private bool _isReading;
    private string? _failure;
    private int _round;

    private string State => _isReading ? "reading" : _added is not null ? "added" : _look is null ? "" : _look.CanAdd ? "ready" : "refused";

    /// <inheritdoc />
    protected override Task LoadAsync() => Task.CompletedTask;

    private async Task ReadAsync(InputFileChangeEventArgs chosen)
    {
        (_look, _added, _failure) = (null, null, null);
        if (chosen.File.Size > FileBytes)
        {
            _failure = Say("OpenTooLarge", chosen.File.Name, FileBytes / 1024);
            return;
        }
        _isReading = true;
        _failure = await Desk.TryAsync(async () =>
        {
            using var bytes = new MemoryStream();
            await using (var stream = chosen.File.OpenReadStream(FileBytes)) await stream.CopyToAsync(bytes);
            var tasks = await Desk.Store.ListTasksAsync(Desk.SchoolId);
            _look = TaskFileLook.Read(chosen.File.Name, DecodedText.Read(bytes.ToArray()).Text, Desk.SchoolId, CultureInfo.CurrentUICulture, tasks);
        });
        _isReading = false;
    }

    private async Task AddAsync()
    {
        if (_look is not { CanAdd: true, Task: { } task }) return;
        // Somebody may have added it in another window meanwhile: what is there is not written over.
        _failure = await Desk.TryAsync(async () =>
        {
            if (await Desk.Store.FindTaskAsync(Desk.SchoolId, task.Id) is not null) return;
            await (_look.Whole is { } whole ? OwnTask.SaveAsync(Desk.Store, task, whole.Design) : OwnTask.SaveAsync(Desk.Store, task));
        });
        if (_failure is not null) return;
        Forget();
        _added = task;
    }

    // A browser says nothing when the same file is chosen again: each round has a field of its own.
    private void Forget()
    {
        _look = null;
        _round++;
    }
}
