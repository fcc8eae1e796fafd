namespace Slantwise.Surface.Tests.Host.Sync;

/// <summary>A clock that stands at one instant.</summary>
public sealed class SetClock(DateTimeOffset now) : TimeProvider
{
    public override DateTimeOffset GetUtcNow() => now;
}
