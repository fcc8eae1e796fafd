using System.Threading.Channels;
using Slantwise.Records.Entries;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>Writes the batches that wait in one commit, the next ones in the next: thirty devices wait for the disk once and not thirty times.</summary>
internal sealed class GroupCommit : IAsyncDisposable
{
    // Bounds how long one commit takes, and with it how long the batch behind it waits.
    private const int MostEntryCount = 4000;

    private readonly IStore _store;
    private readonly Channel<Waiting> _waiting = Channel.CreateUnbounded<Waiting>(new UnboundedChannelOptions { SingleReader = true });
    private readonly Task _writing;

    public GroupCommit(IStore store)
    {
        _store = store;
        _writing = Task.Run(WriteAllAsync);
    }

    /// <summary>Appends entries, together with what else waits.</summary>
    /// <returns>Once all are durable: the ids of those that were not here before.</returns>
    /// <exception cref="ObjectDisposedException">The program is ending.</exception>
    public Task<IReadOnlySet<Guid>> AppendAsync(Guid schoolId, IReadOnlyList<Entry> entries)
    {
        // On its own thread afterwards: the writer is not to run the answers of those it has just served.
        var waiting = new Waiting(schoolId, entries, new(TaskCreationOptions.RunContinuationsAsynchronously));
        ObjectDisposedException.ThrowIf(!_waiting.Writer.TryWrite(waiting), this);
        return waiting.Done.Task;
    }

    /// <summary>Writes what waits, and then takes no more.</summary>
    public async ValueTask DisposeAsync()
    {
        _waiting.Writer.TryComplete();
        await _writing;
    }

    private async Task WriteAllAsync()
    {
        while (await _waiting.Reader.WaitToReadAsync())
        {
            var (group, entryCount) = (new List<Waiting>(), 0);
            while (entryCount < MostEntryCount && _waiting.Reader.TryRead(out var next))
            {
                group.Add(next);
                entryCount += next.Entries.Count;
            }
            foreach (var school in group.GroupBy(w => w.SchoolId)) await WriteAsync(school.Key, [.. school]);
        }
    }

    private async Task WriteAsync(Guid schoolId, IReadOnlyList<Waiting> group)
    {
        var append = AppendAsync(schoolId, group);
        // Whatever it is that fails, it goes to those who wait and not to the writer, who goes on.
        await ((Task)append).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (append.IsCompletedSuccessfully)
        {
            foreach (var waiting in group) waiting.Done.TrySetResult(append.Result);
        }
        else if (append.Exception?.InnerException is ArgumentException && group.Count > 1)
        {
            // One of them names what is no longer there: each by itself, so that it takes no other with it.
            foreach (var waiting in group) await WriteAsync(schoolId, [waiting]);
        }
        else
        {
            var failure = append.Exception?.InnerException ?? new OperationCanceledException();
            foreach (var waiting in group) waiting.Done.TrySetException(failure);
        }
    }

    private async Task<IReadOnlySet<Guid>> AppendAsync(Guid schoolId, IReadOnlyList<Waiting> group)
    {
        // The same entry may wait twice: from a device that has sent it again, or by two ways.
        var entries = group.SelectMany(w => w.Entries).DistinctBy(e => e.Id).ToList();
        return (await _store.AppendEntriesAsync(schoolId, entries)).AddedIds.ToHashSet();
    }

    private sealed record Waiting(Guid SchoolId, IReadOnlyList<Entry> Entries, TaskCompletionSource<IReadOnlySet<Guid>> Done);
}
