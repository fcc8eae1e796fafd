namespace Slantwise.Records.Scans.Intake;

/// <summary>What a person said to an item.</summary>
/// <param name="Value">What it is, as <see cref="ScanItem.Value"/>; none for "nothing there, add nothing".</param>
/// <param name="AnsweredAt">When, UTC.</param>
public sealed record ScanAnswer(decimal? Value, DateTimeOffset AnsweredAt)
{
    /// <summary>The entries this answer made. Empty where it made none: it says what was on record already, or nothing.</summary>
    public IReadOnlyList<Guid> EntryIds { get; init; } = [];
}
