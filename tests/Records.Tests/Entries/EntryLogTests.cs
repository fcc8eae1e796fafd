using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Entries;

public sealed class EntryLogTests
{
    [Fact]
    public void Current_EmptyLog_IsEmpty() => Assert.Empty(EntryLog.Current([]));

    [Fact]
    public void Current_ChainOfCorrections_KeepsTheLastInAnyOrder() =>
        Gen.Select(Gen.Int[1, 8], Gen.Int[0, 10_000]).Sample((length, seed) =>
        {
            var recorder = RecorderOf(Taught);
            var chain = Enumerable.Range(0, length)
                .Select(i => recorder.Put(Alba.Id, BalanceId, 1, 1, new Trial(i % 2 == 0, i))!).ToArray();
            Assert.Equal(chain[..^1].Select(e => (Guid?)e.Id), chain[1..].Select(e => e.SupersedesId));
            new Random(seed).Shuffle(chain);

            var current = Assert.Single(EntryLog.Current(chain));
            Assert.Equal(new Trial((length - 1) % 2 == 0, length - 1), current.Fact);
        });

    [Fact]
    public void Current_Withdrawn_HoldsNothing()
    {
        var recorder = RecorderOf(Taught);
        var put = recorder.Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!;
        var back = recorder.TakeBack(EntrySlot.Of(put))!;
        Assert.Equal(put.Id, back.SupersedesId);
        Assert.Empty(EntryLog.Current([put, back]));
    }

    [Fact]
    public void Current_TwoDevicesOneSlot_TheLastReceivedHolds()
    {
        var early = RecorderOf(Taught).Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))! with { DeviceId = "z", ReceivedAt = Clock.Now };
        var late = early with { Id = Id(99), DeviceId = "a", Fact = new Choice(BalanceLevels[1].Id), ReceivedAt = Clock.Now.AddMinutes(1) };
        Assert.Equal(late.Fact, Assert.Single(EntryLog.Current([late, early])).Fact);
    }

    public static TheoryData<EntryFact> Events { get; } =
    [
        new Visit(VisitTopic.Cue, VisitForm.Asked), new PhaseMark(PhaseKind.Activity), new EngagementScan(20, 24), new Note("left arm"),
    ];

    [Theory, MemberData(nameof(Events))]
    public void Current_SameEventSeveralTimes_EachCounts(EntryFact fact)
    {
        var recorder = RecorderOf(Taught);
        var events = Enumerable.Range(0, 3).Select(_ => recorder.Put(null, null, null, null, fact)!).ToList();
        Assert.All(events, e => Assert.Null(e.SupersedesId));
        Assert.Equal(3, EntryLog.Current(events).Count);
        // A recorder made anew from such a log goes on.
        Assert.Equal(4, RecorderOf(Taught.With(events)).Put(null, null, null, null, fact)!.DeviceSequence);
    }
}
