using System.Reflection;
using Slantwise.Records;
using Slantwise.Records.Entries;

namespace Slantwise.Surface.Tests.Desk.Results;

/// <summary>A store that keeps one lesson's entries in memory and fails when told to; it can do nothing else.</summary>
public class EntriesOnlyStore : DispatchProxy
{
    private readonly List<Entry> _entries = [];
    private bool _isFailing;

    public static (IStore Store, EntriesOnlyStore Inside) Create()
    {
        var store = Create<IStore, EntriesOnlyStore>();
        return (store, (EntriesOnlyStore)(object)store);
    }

    public IReadOnlyList<Entry> Entries => _entries;

    public void Add(Entry entry) => _entries.Add(entry);

    public void Fail(bool isFailing) => _isFailing = isFailing;

    protected override object? Invoke(MethodInfo? targetMethod, object?[]? args) => targetMethod?.Name switch
    {
        nameof(IStore.ListEntriesAsync) => Task.FromResult<IReadOnlyList<Entry>>([.. _entries]),
        nameof(IStore.AppendEntriesAsync) when _isFailing => Task.FromException<AppendOutcome>(new IOException("The disk is full.")),
        nameof(IStore.AppendEntriesAsync) => Append((IReadOnlyList<Entry>)args![1]!),
        _ => throw new NotSupportedException(targetMethod?.Name),
    };

    private Task<AppendOutcome> Append(IReadOnlyList<Entry> entries)
    {
        _entries.AddRange(entries);
        return Task.FromResult(new AppendOutcome([.. entries.Select(e => e.Id)], 0));
    }
}
