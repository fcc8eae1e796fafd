namespace Slantwise.Records.Evidence.Engagement;

/// <summary>One look around the hall.</summary>
/// <param name="MadeAt">When, by the clock of the device.</param>
/// <param name="EngagedCount">Those doing what the task asks.</param>
/// <param name="PresentCount">Those in the lesson at that moment.</param>
/// <param name="EntryId">Its entry.</param>
public sealed record EngagementLook(DateTimeOffset MadeAt, int EngagedCount, int PresentCount, Guid EntryId)
{
    /// <summary>Engaged over present.</summary>
    public double ShareFraction => (double)EngagedCount / PresentCount;
}
