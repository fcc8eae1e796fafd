using Slantwise.Paper.Words;
using Slantwise.Records.Schools;

namespace Slantwise.Paper.LessonPages;

/// <summary>What holds in every lesson, and what this school does not allow.</summary>
internal static class SafetyLines
{
    public static IEnumerable<string> Of(SafetyPolicy policy, CardWords words)
    {
        yield return words["StopSignal"];
        yield return words["StopIsYours"];
        var closed = new[] { BodyDemand.HeadWeight, BodyDemand.Inversion, BodyDemand.Roll }
            .Where(d => !Records.Sheets.Offer.IsAllowed(d, policy)).Select(d => words["Demand" + d]).ToList();
        if (closed.Count > 0) yield return words.Of("NotAllowed", string.Join(", ", closed));
    }
}
