using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.Engagement;

/// <summary>The looks around the hall of one lesson.</summary>
/// <remarks>
/// Each look counts the same class anew, and they are few and never drawn at random: so the range is that of the looks themselves, lowest to highest, and no
/// interval for the whole lesson is made from them.
/// </remarks>
public sealed record LessonEngagement
{
    /// <summary>The looks by time; at least one.</summary>
    public required IReadOnlyList<EngagementLook> Looks { get; init; }

    /// <summary>The lowest share of the looks.</summary>
    public double LowFraction => Looks.Min(l => l.ShareFraction);

    /// <summary>The highest share of the looks.</summary>
    public double HighFraction => Looks.Max(l => l.ShareFraction);

    /// <summary>The mean of the looks, each as one moment, however many were present.</summary>
    public double MeanFraction => Looks.Average(l => l.ShareFraction);

    /// <summary>The looks of a lesson.</summary>
    /// <param name="record">The lesson.</param>
    /// <returns>None where there was no look; a withdrawn or corrected one does not count.</returns>
    public static LessonEngagement? Of(LessonRecord record)
    {
        var looks = EntryLog.Current(record.Entries.Where(e => e.LessonId == record.Lesson.Id).DistinctBy(e => e.Id))
            .Where(e => e.Fact is EngagementScan { PresentCount: > 0 })
            .Select(e => (e, Scan: (EngagementScan)e.Fact))
            .OrderBy(x => x.e.MadeAt).ThenBy(x => x.e.Id)
            .Select(x => new EngagementLook(x.e.MadeAt, x.Scan.EngagedCount, x.Scan.PresentCount, x.e.Id))
            .ToList();
        return looks.Count == 0 ? null : new LessonEngagement { Looks = looks };
    }
}
