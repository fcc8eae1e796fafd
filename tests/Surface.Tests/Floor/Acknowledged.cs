using System.Collections.Concurrent;
using Slantwise.Records.Entries;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>The model of a lesson: what screens have said is kept, device by device, in the order in which they said it.</summary>
internal sealed class Acknowledged
{
    private readonly ConcurrentDictionary<string, List<Act>> _byDevice = new(StringComparer.Ordinal);

    /// <summary>How much a device has said.</summary>
    public int CountOf(string deviceId) => Of(deviceId).Count;

    /// <summary>All of it.</summary>
    public int Count => _byDevice.Values.Sum(acts => acts.Count);

    /// <summary>Everything, of all devices.</summary>
    public IEnumerable<Act> All() => _byDevice.Values.SelectMany(acts => acts);

    /// <summary>A screen has said of these that they are kept.</summary>
    public void Add(string deviceId, IEnumerable<Act> acts) => Of(deviceId).AddRange(acts);

    /// <summary>What a device has said.</summary>
    public List<Act> Of(string deviceId) => _byDevice.GetOrAdd(deviceId, _ => []);

    /// <summary>Holds a log to the model: each acknowledged fact once, under its device's own number, and nothing else from these devices.</summary>
    /// <param name="entries">Every entry of the lesson.</param>
    public void AssertHeldBy(IReadOnlyList<Entry> entries)
    {
        Assert.Equal(entries.Count, entries.Select(e => e.Id).Distinct().Count());
        foreach (var (device, acts) in _byDevice)
        {
            var own = entries.Where(e => e.DeviceId == device).OrderBy(e => e.DeviceSequence).ToList();
            Assert.Equal(acts.Select((act, i) => (i + 1L, act)), own.Select(e => (e.DeviceSequence, Act.Of(e))));
        }
    }
}
