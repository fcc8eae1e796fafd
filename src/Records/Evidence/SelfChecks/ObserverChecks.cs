using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.SelfChecks;

/// <summary>How two adults' checks of the same cue of the same try or set agree: about the cues and how they are read.</summary>
/// <param name="Agreement">What the engine says of them.</param>
/// <param name="Seen">Agreement on “met” and on “not met” apart, since overall agreement flatters where nearly all was met.</param>
/// <param name="CueCount">Different cues checked twice.</param>
/// <param name="EntryIds">The checks.</param>
public sealed record ObserverChecks(JudgeAgreement Agreement, ObserverAgreement Seen, int CueCount, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>The checks made twice.</summary>
    /// <param name="lessons">Lessons of one class, any number.</param>
    /// <returns>None where nothing was checked from two devices.</returns>
    /// <remarks>
    /// Entries name no adult, only the device; so two devices stand for two observers. One check that corrects another is a correction, not a second view.
    /// Of more than two devices the first two by name are compared.
    /// </remarks>
    public static ObserverChecks? Of(IReadOnlyList<LessonRecord> lessons)
    {
        var twice = lessons.SelectMany(TwiceIn).ToList();
        if (twice.Count == 0) return null;
        var tables = twice.GroupBy(t => t.First.PupilId).OrderBy(g => g.Key).Select(g => AgreementTable.Of(2, g.Select(PairOf))).ToList();
        return new(
            JudgeAgreement.Of(tables, AgreementWeights.Identity(2), SuccessShare.RangeConfidenceFraction),
            ObserverAgreement.Of(AgreementTable.Sum(tables)),
            twice.Select(t => (t.First.TaskId, CueOf(t.First))).Distinct().Count(),
            [.. twice.SelectMany(t => new[] { t.First.Id, t.Second.Id })]);
    }

    private static IEnumerable<(Entry First, Entry Second)> TwiceIn(LessonRecord record)
    {
        var replaced = record.Entries.Where(e => e.SupersedesId is not null).Select(e => e.SupersedesId!.Value).ToHashSet();
        return record.Entries
            .Where(e => e is { Fact: TeacherCheck, PupilId: not null } && !replaced.Contains(e.Id)).DistinctBy(e => e.Id)
            .GroupBy(EntrySlot.Of)
            .Select(slot => slot.GroupBy(e => e.DeviceId).OrderBy(d => d.Key, StringComparer.Ordinal).Select(d => d.OrderBy(e => e.DeviceSequence).Last()).ToList())
            .Where(devices => devices.Count > 1)
            .OrderBy(devices => devices[0].Id)
            .Select(devices => (devices[0], devices[1]));
    }

    private static int CueOf(Entry entry) => ((TeacherCheck)entry.Fact).CueNumber;

    private static RatedPair PairOf((Entry First, Entry Second) both) =>
        new(((TeacherCheck)both.First.Fact).IsMet ? 1 : 0, ((TeacherCheck)both.Second.Fact).IsMet ? 1 : 0);
}
