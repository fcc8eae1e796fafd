using Microsoft.AspNetCore.Components.Forms;
using Slantwise.Records.Roster;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Classes;

/// <summary>Brings in a class list: files, what they would do, then doing it.</summary>
public partial class RosterImport
{
    // A district's list of 100,000 rows is about 10 MB.
    private const int FileBytes = 32 * 1024 * 1024;
    private const int FileCount = 12;
    private IReadOnlyList<string> _names = [];
    private RosterPlan? _plan;
    private bool _isReading;
    private bool _isDone;
    private string? _failure;

    /// <inheritdoc />
    protected override Task LoadAsync() => Task.CompletedTask;

    private async Task ReadAsync(InputFileChangeEventArgs chosen)
    {
        (_plan, _isDone, _failure) = (null, false, null);
        if (chosen.FileCount > FileCount)
        {
            _failure = Say("RosterTooManyFiles", FileCount);
            return;
        }
        var files = chosen.GetMultipleFiles(FileCount);
        _names = [.. files.Select(f => f.Name)];
        if (files.FirstOrDefault(f => f.Size > FileBytes) is { } large)
        {
            _failure = Say("RosterFileTooLarge", large.Name, FileBytes / 1024 / 1024);
            return;
        }
        _isReading = true;
        _failure = await Desk.TryAsync(async () => _plan = await PlanAsync(files));
        _isReading = false;
    }

    private async Task<RosterPlan> PlanAsync(IReadOnlyList<IBrowserFile> files)
    {
        var read = new List<RosterFile>();
        foreach (var file in files)
        {
            using var bytes = new MemoryStream();
            await using (var stream = file.OpenReadStream(FileBytes)) await stream.CopyToAsync(bytes);
            read.Add(RosterFile.Read(file.Name, bytes.ToArray()));
        }
        return RosterPlan.Of(
            Records.Roster.RosterFiles.Read(read),
            Desk.SchoolId,
            await Desk.Store.ListClassesAsync(Desk.SchoolId),
            await Desk.Store.ListPupilsAsync(Desk.SchoolId),
            await Desk.Store.ListEnrolmentsAsync(Desk.SchoolId),
            Desk.Clock);
    }

    private async Task SaveAsync()
    {
        var plan = _plan!;
        _failure = await Desk.TryAsync(() => Desk.Store.SaveRosterAsync(Desk.SchoolId, plan.Save));
        _isDone = _failure is null;
    }
}
