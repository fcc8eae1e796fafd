using System.Reflection;
using Slantwise.Records.Entries;

namespace Slantwise.Records.Tests.Floor;

/// <summary>A store that passes every call on, but holds appending up or lets it fail as long as it is told to.</summary>
public class HeldStore : DispatchProxy
{
    private readonly List<int> _entryCounts = [];
    private IStore? _store;
    private TaskCompletionSource? _held;

    /// <summary>Entries of each append that was asked for, in order.</summary>
    public IReadOnlyList<int> EntryCounts
    {
        get { lock (_entryCounts) return [.. _entryCounts]; }
    }

    /// <summary>Thrown by each append, as by a full disk; none to go on.</summary>
    public Exception? Failure { get; set; }

    public static (IStore Store, HeldStore Held) Over(IStore store)
    {
        var proxy = Create<IStore, HeldStore>();
        var held = (HeldStore)(object)proxy;
        held._store = store;
        return (proxy, held);
    }

    /// <summary>Holds every append up until the answer is disposed.</summary>
    public IDisposable Hold()
    {
        var held = _held = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        return new Ending(() =>
        {
            _held = null;
            held.SetResult();
        });
    }

    protected override object? Invoke(MethodInfo? targetMethod, object?[]? args)
    {
        if (targetMethod!.Name != nameof(IStore.AppendEntriesAsync)) return targetMethod.Invoke(_store, args);
        lock (_entryCounts) _entryCounts.Add(((IReadOnlyList<Entry>)args![1]!).Count);
        if (Failure is { } failure) throw failure;
        return AppendAsync((Guid)args![0]!, (IReadOnlyList<Entry>)args[1]!);
    }

    private async Task<AppendOutcome> AppendAsync(Guid schoolId, IReadOnlyList<Entry> entries)
    {
        if (_held is { } held) await held.Task;
        return await _store!.AppendEntriesAsync(schoolId, entries);
    }

    private sealed class Ending(Action end) : IDisposable
    {
        public void Dispose() => end();
    }
}
