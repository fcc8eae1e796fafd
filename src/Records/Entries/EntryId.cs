namespace Slantwise.Records.Entries;

/// <summary>Makes ids that sort by the time they were made.</summary>
public static class EntryId
{
    /// <summary>A new UUIDv7.</summary>
    /// <param name="clock">The clock that dates it.</param>
    /// <remarks>Source: [RFC9562] section 5.7.</remarks>
#pragma warning disable RS0030 // The one place that makes ids.
    public static Guid New(TimeProvider clock) => Guid.CreateVersion7(clock.GetUtcNow());
#pragma warning restore RS0030
}
