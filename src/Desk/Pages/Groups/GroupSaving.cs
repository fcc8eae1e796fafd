namespace Slantwise.Desk.Pages.Groups;

/// <summary>Saves what changes, one after the other: what was changed last is what is kept.</summary>
/// <param name="save">Saves the newest; says why it could not, or nothing.</param>
public sealed class GroupSaving(Func<Task<string?>> save)
{
    private bool _isWaiting;

    /// <summary>Whether something is on its way.</summary>
    public bool IsBusy { get; private set; }

    /// <summary>Why the last save did not work; none if it did, or nothing was saved yet.</summary>
    public string? Failure { get; private set; }

    /// <summary>Whether something was saved, and nothing since was lost.</summary>
    public bool IsSaved { get; private set; }

    /// <summary>Saves now, or once more when the save under way is done.</summary>
    public async Task SaveAsync()
    {
        _isWaiting = true;
        if (IsBusy) return;
        IsBusy = true;
        while (_isWaiting)
        {
            _isWaiting = false;
            Failure = await save();
            IsSaved = Failure is null;
        }
        IsBusy = false;
    }
}
