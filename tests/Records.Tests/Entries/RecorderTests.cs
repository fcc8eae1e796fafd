using CsCheck;
using Slantwise.Records.Entries;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Entries;

public sealed class RecorderTests
{
    private static readonly Gen<(Guid Pupil, int Set, int? Trial, EntryFact Fact)> Said = Gen.OneOf(
        Gen.Select(Gen.OneOf(Alba.Id, Bruno.Id), Gen.Int[1, 3], Gen.Int[0, 3], (p, s, l) => (p, s, (int?)null, (EntryFact)new Choice(BalanceLevels[l].Id))),
        Gen.Select(Gen.OneOf(Alba.Id, Bruno.Id), Gen.Int[1, 3], Gen.Int[1, 5], Gen.Bool, (p, s, t, ok) => (p, s, (int?)t, (EntryFact)new Trial(ok))),
        Gen.Select(Gen.OneOf(Alba.Id, Bruno.Id), Gen.Int[1, 3], Gen.Int[1, 3], Gen.Bool, (p, s, c, on) => (p, s, (int?)null, (EntryFact)new CueTick(c, on))));

    [Fact]
    public void Put_SameFactTwice_GivesNothingTheSecondTime()
    {
        var recorder = RecorderOf(Taught);
        Assert.NotNull(recorder.Put(Alba.Id, BalanceId, 1, null, new Prediction(3, null)));
        Assert.Null(recorder.Put(Alba.Id, BalanceId, 1, null, new Prediction(3, null)));
    }

    [Fact]
    public void Put_OtherFact_SupersedesWhatHeld()
    {
        var recorder = RecorderOf(Taught);
        var first = recorder.Put(Alba.Id, BalanceId, 1, null, new Prediction(3, null))!;
        var second = recorder.Put(Alba.Id, BalanceId, 1, null, new Prediction(4, null))!;
        Assert.Equal(first.Id, second.SupersedesId);
        Assert.Equal((1, 2), (first.DeviceSequence, second.DeviceSequence));
    }

    [Fact]
    public void Put_Withdrawal_Throws() =>
        Assert.Throws<ArgumentException>(() => RecorderOf(Taught).Put(Alba.Id, BalanceId, 1, null, new Withdrawal()));

    [Fact]
    public void TakeBack_EmptySlot_GivesNothing() =>
        Assert.Null(RecorderOf(Taught).TakeBack(new EntrySlot(nameof(Choice), Alba.Id, BalanceId, 1, null, null)));

    [Fact]
    public void Put_AnySequence_LogSaysTheLastWordsAndSayingThemAgainAddsNothing() =>
        Said.List[0, 40].Sample(said =>
        {
            var recorder = RecorderOf(Taught);
            var log = said.Select(s => recorder.Put(s.Pupil, BalanceId, s.Set, s.Trial, s.Fact)).OfType<Entry>().ToList();

            // A plain second version: the last fact said of each question.
            var last = new Dictionary<(Guid, int, int?, string), EntryFact>();
            foreach (var s in said) last[(s.Pupil, s.Set, s.Trial, s.Fact is CueTick c ? $"cue {c.CueNumber}" : s.Fact.GetType().Name)] = s.Fact;
            Assert.Equal(
                last.Values.Select(f => f.ToString()).Order(),
                EntryLog.Current(log).Select(e => e.Fact.ToString()).Order());

            var again = RecorderOf(Taught.With(log));
            Assert.All(EntryLog.Current(log), e => Assert.Null(again.Put(e.PupilId, e.TaskId, e.SetNumber, e.TrialNumber, e.Fact)));
        });
}
