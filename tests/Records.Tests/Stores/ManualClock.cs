namespace Slantwise.Records.Tests.Stores;

/// <summary>A clock that a test sets; each reading is a tick later than the one before.</summary>
public sealed class ManualClock : TimeProvider
{
    private long _ticks = new DateTimeOffset(2026, 9, 1, 8, 0, 0, TimeSpan.Zero).UtcTicks;

    public DateTimeOffset Now
    {
        get => new(Interlocked.Read(ref _ticks), TimeSpan.Zero);
        set => Interlocked.Exchange(ref _ticks, value.UtcTicks);
    }

    public override DateTimeOffset GetUtcNow() => new(Interlocked.Increment(ref _ticks), TimeSpan.Zero);
}
