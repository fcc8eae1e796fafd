using System.Reflection;

namespace Slantwise.Records.Tests.Simulation;

/// <summary>A store that passes every call on until some batches of entries are in, and then fails as a full disk does.</summary>
public class FailingStore : DispatchProxy
{
    private IStore? _store;
    private int _batchesLeft;

    public static IStore After(int batches, IStore store)
    {
        var proxy = Create<IStore, FailingStore>();
        ((FailingStore)(object)proxy)._store = store;
        ((FailingStore)(object)proxy)._batchesLeft = batches;
        return proxy;
    }

    protected override object? Invoke(MethodInfo? targetMethod, object?[]? args)
    {
        if (targetMethod!.Name == nameof(IStore.AppendEntriesAsync) && _batchesLeft-- == 0) throw new IOException("No space left on device");
        return targetMethod.Invoke(_store, args);
    }
}
