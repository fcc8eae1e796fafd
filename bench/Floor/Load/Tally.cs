using System.Collections.Concurrent;
using System.Globalization;

namespace Slantwise.Bench.Floor.Load;

/// <summary>What came of the batches.</summary>
internal sealed class Tally
{
    private readonly ConcurrentQueue<(double DueS, double TookMs)> _answered = [];
    private readonly ConcurrentDictionary<string, int> _troubles = [];
    private long _newsCount, _heardByteCount;

    public ConcurrentBag<Guid> AcknowledgedIds { get; } = [];

    public ConcurrentBag<Guid> RefusedIds { get; } = [];

    public void Refused(Guid id, string reason)
    {
        RefusedIds.Add(id);
        Trouble(reason);
    }

    public void Answered(double dueS, double atS) => _answered.Enqueue((dueS, (atS - dueS) * 1000));

    public void Trouble(string what) => _troubles.AddOrUpdate(what, 1, (_, count) => count + 1);

    public void Heard(int newsCount, int byteCount)
    {
        Interlocked.Add(ref _newsCount, newsCount);
        Interlocked.Add(ref _heardByteCount, byteCount);
    }

    /// <summary>Says how long batches took that were due in a time.</summary>
    public string Latencies(double fromS, double untilS)
    {
        var took = _answered.Where(a => a.DueS >= fromS && a.DueS < untilS).Select(a => a.TookMs).Order().ToArray();
        if (took.Length == 0) return "none";
        double At(double fraction) => took[Math.Min(took.Length - 1, (int)(took.Length * fraction))];
        return string.Create(CultureInfo.InvariantCulture,
            $"{took.Length / (untilS - fromS):0} batches/s   p50 {At(0.5):0.0} ms   p95 {At(0.95):0.0} ms   p99 {At(0.99):0.0} ms   p99.9 {At(0.999):0.0} ms   most {took[^1]:0.0} ms");
    }

    public string Troubles => _troubles.IsEmpty ? "none" : string.Join(", ", _troubles.Select(t => $"{t.Key} {t.Value}"));

    public string Streams => string.Create(CultureInfo.InvariantCulture, $"{_newsCount} pieces of news, {_heardByteCount / 1e6:0.0} MB");
}
