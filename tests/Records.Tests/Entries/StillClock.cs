namespace Slantwise.Records.Tests.Entries;

/// <summary>A clock that stands where a test puts it.</summary>
internal sealed class StillClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
