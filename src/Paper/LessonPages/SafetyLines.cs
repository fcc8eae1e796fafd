using System.Globalization;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Words;

namespace Slantwise.Paper.LessonPages;

/// <summary>What holds in every lesson, what this school does not allow, and what it asks for where the lesson plans weight on the head.</summary>
internal static class SafetyLines
{
    public static IEnumerable<string> Of(LessonRecord record, CardWords words, CultureInfo language)
    {
        var policy = record.School.Policy;
        yield return words["StopSignal"];
        yield return words["StopIsYours"];
        var closed = new[] { BodyDemand.HeadWeight, BodyDemand.Inversion, BodyDemand.Roll, BodyDemand.Spotting }
            .Where(d => !Offer.IsAllowed(d, policy)).Select(d => words["Demand" + d]).ToList();
        if (closed.Count > 0) yield return words.Of("NotAllowed", string.Join(", ", closed));
        if (record.Sheet!.Content.Tasks.SelectMany(task => OfferedLevel.Of(task, record, null)).Any(l => PostureDemands.Of(l.Level).Contains(BodyDemand.HeadWeight)))
            yield return SafetyTerms.HeadWeight(policy, language);
    }
}
