namespace Slantwise.Surface.Tests.Desk.Results;

/// <summary>A clock that goes on by a second each time it is read.</summary>
internal sealed class TickingClock : TimeProvider
{
    public static readonly DateTimeOffset Start = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

    private int _readCount;

    public override DateTimeOffset GetUtcNow() => Start.AddSeconds(_readCount++);
}
