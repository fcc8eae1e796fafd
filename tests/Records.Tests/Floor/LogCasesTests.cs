using Slantwise.Records.Entries;

namespace Slantwise.Records.Tests.Floor;

public sealed class LogCasesTests
{
    [Fact]
    public Task Text_OfTheCases_IsWhatTheFloorIsTestedWith() => AgreedFile.HoldAsync("src/Floor/tests/log-cases.json", LogCases.Text());

    // Cases that a wrong rule passes would hold the floor to nothing.
    [Fact]
    public void CaseOf_AllSeeds_TellsEveryRuleFromItsNeighbours()
    {
        var cases = Enumerable.Range(1, LogCases.Count).Select(LogCases.CaseOf).ToList();
        var entries = cases.SelectMany(c => c.Log).ToList();
        Assert.Equal(entries.Count, entries.Select(e => e.Id).Distinct().Count());
        Assert.Contains(entries, e => e.ReceivedAt is null);
        Assert.True(entries.Select(e => e.Fact.GetType()).Distinct().Count() >= 11, "Nearly every kind of fact occurs.");
        Assert.All<Func<Entry, IComparable?>>([e => e.MadeAt, e => e.Id, e => e.DeviceSequence], order =>
            Assert.True(cases.Count(c => !Read(c.Log, order).SequenceEqual(c.Holds)) >= 10, "Another order gives another answer in ten cases or more."));
        Assert.True(cases.Count(c => c.Log.Any(e => e.Fact is Withdrawal) && c.Log.Any(e => EntryLog.IsEvent(e.Fact))) >= 10, "Withdrawals and events stand side by side.");
        Assert.Contains(cases, c => c.Log.GroupBy(e => (e.ReceivedAt, e.DeviceId, e.DeviceSequence)).Any(g => g.Count() > 1));
        Assert.Contains(cases, c => c.Log.GroupBy(e => e.ReceivedAt).Any(g => g.Select(e => e.DeviceId).Distinct().Count() > 1));
    }

    private static List<Guid> Read(IReadOnlyList<Entry> log, Func<Entry, IComparable?> order)
    {
        var superseded = log.Select(e => e.SupersedesId).ToHashSet();
        var left = log.Where(e => !superseded.Contains(e.Id) && e.Fact is not Withdrawal).OrderBy(order).ToList();
        var last = left.Where(e => !EntryLog.IsEvent(e.Fact)).GroupBy(EntrySlot.Of).Select(g => g.Last()).ToHashSet();
        return [.. left.Where(e => EntryLog.IsEvent(e.Fact) || last.Contains(e)).Select(e => e.Id)];
    }
}
