using System.Globalization;
using CsCheck;
using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Checks;

public sealed class PupilSheetCheckTests
{
    [Fact]
    public void Of_NothingEntered_SaysNothing() => Assert.Empty(PupilSheetCheck.Of(Taught, Alba.Id));

    [Fact]
    public void Of_WholeSet_SaysNothing() => Assert.Empty(Keys(
        (1, null, Level(0)), (1, null, new Prediction(1, null)), (1, 1, new Trial(true, 3)), (1, 2, new Trial(false, 2.9)), (1, null, new Decision(NextLevel.Harder)),
        (2, null, Level(1)), (2, null, new Prediction(2, null)), (2, 1, new Trial(true))));

    [Fact]
    public void Of_WhatIsMissing_IsFlagged()
    {
        Assert.Equal(["TrialsWithoutChoice"], Keys((1, null, new Prediction(1, null)), (1, 1, new Trial(true))));
        Assert.Equal(["PredictionMissing"], Keys((1, null, Level(0)), (1, 1, new Trial(true))));
        Assert.Equal(["DecisionWithoutTrials"], Keys((1, null, Level(0)), (1, null, new Decision(NextLevel.Same))));
    }

    [Fact]
    public void Of_TimesAgainstTheTick_AreFlaggedAtTheTrial()
    {
        var findings = Findings((1, null, Level(1)), (1, null, new Prediction(1, null)), (1, 1, new Trial(true, 3.9)), (1, 2, new Trial(false, 4)));
        Assert.Equal(["SuccessHeldTooShort", "FailureHeldLongEnough"], findings.Select(f => f.Key));
        Assert.Equal([1, 2], findings.Select(f => f.OnSheet!.TrialNumber));
        Assert.Equal(
            "One-foot balance, set 1, trial 1: marked as done, and 3.9 s were held where the level asks for 4 s.",
            findings[0].Sentence(CultureInfo.GetCultureInfo("en")));
        Assert.StartsWith("One-foot balance, serie 1, intento 1: ", findings[0].Sentence(CultureInfo.GetCultureInfo("es")));
    }

    [Fact]
    public void Of_DecisionPastTheEnds_IsFlagged()
    {
        Assert.Equal(["HarderAtHardest"], Keys((1, null, Level(3)), (1, null, new Prediction(1, null)), (1, 1, new Trial(true)), (1, null, new Decision(NextLevel.Harder))));
        Assert.Equal(["EasierAtEasiest"], Keys((1, null, Level(0)), (1, null, new Prediction(1, null)), (1, 1, new Trial(true)), (1, null, new Decision(NextLevel.Easier))));
    }

    [Fact]
    public void Of_HardestLevelRestricted_TheLastOfferedIsTheHardest()
    {
        var record = Taught with { Restrictions = [new() { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.HandWeight }] };
        Assert.Equal(["HarderAtHardest"], KeysOf(record, (1, null, Level(2)), (1, null, new Prediction(1, null)), (1, 1, new Trial(true)), (1, null, new Decision(NextLevel.Harder))));
        Assert.Equal(["ChoiceNotOffered"], KeysOf(record, (1, null, Level(3))));
    }

    [Fact]
    public void Of_NextLevelAgainstTheDecision_IsFlagged()
    {
        (int, int?, EntryFact)[] first = [(1, null, Level(1)), (1, null, new Prediction(1, null)), (1, 1, new Trial(true))];
        Assert.Equal(["NextChoiceNotHarder"], Keys([.. first, (1, null, new Decision(NextLevel.Harder)), (2, null, Level(1))]));
        Assert.Equal(["NextChoiceNotSame"], Keys([.. first, (1, null, new Decision(NextLevel.Same)), (2, null, Level(2))]));
        Assert.Equal(["NextChoiceNotEasier"], Keys([.. first, (1, null, new Decision(NextLevel.Easier)), (2, null, Level(2))]));
        Assert.Empty(Keys([.. first, (1, null, new Decision(NextLevel.Harder)), (3, null, Level(0))]));
    }

    [Fact]
    public void Of_AbsentPupilWithResults_IsFlaggedOnce()
    {
        var recorder = RecorderOf(Taught);
        var record = Taught.With(
            recorder.Put(Alba.Id, null, null, null, new Presence(false)),
            recorder.Put(Alba.Id, BalanceId, 1, null, Level(0)),
            recorder.Put(Alba.Id, BalanceId, 2, null, Level(0)));
        Assert.Equal("AbsentWithEntries", Assert.Single(PupilSheetCheck.Of(record, Alba.Id)).Key);
        Assert.Empty(PupilSheetCheck.Of(record, Bruno.Id));
    }

    [Fact]
    public void Of_PredictionsTheSheetDoesNotAskFor_AreFlagged()
    {
        var holds = Taught with { Sheet = Taught.Sheet! with { Content = Towers with { Predicts = PredictionKind.HoldS } } };
        var nothing = Taught with { Sheet = Taught.Sheet! with { Content = Towers with { Predicts = PredictionKind.Nothing } } };
        Assert.Equal(["PredictionNotHold"], KeysOf(holds, (1, null, new Prediction(2, null))));
        Assert.Equal(["PredictionNotAsked"], KeysOf(nothing, (1, null, new Prediction(2, null))));
        Assert.Equal(["PredictionNotCount"], Keys((1, null, new Prediction(null, 2))));
        Assert.Equal(["EntryPredictionAboveTrials"], Keys((1, null, new Prediction(6, null))));
    }

    [Fact]
    public void Of_SecondsAskedForACountedLevel_AreNotMissed()
    {
        var holds = Taught with { Sheet = Taught.Sheet! with { Content = Towers with { Predicts = PredictionKind.HoldS } } };
        var recorder = RecorderOf(holds);
        Assert.Empty(PupilSheetCheck.Of(holds.With(
            recorder.Put(Alba.Id, RopeId, 1, null, new Choice(RopeLevels[0].Id)), recorder.Put(Alba.Id, RopeId, 1, 1, new Trial(true))), Alba.Id));
        Assert.Equal(["PredictionMissing"], KeysOf(holds, (1, null, Level(0)), (1, 1, new Trial(true))));
    }

    [Fact]
    public void Of_OldNumbersBeyondTheSheet_AreFlagged()
    {
        var trials = Enumerable.Range(1, 6).Select(n => (1, (int?)n, (EntryFact)new Trial(true)));
        Assert.Equal(["MoreSuccessesThanTrials", "EntryTrialUnknown"], Keys([(1, null, Level(0)), (1, null, new Prediction(1, null)), .. trials]));
        Assert.Equal(["ChoiceNotOnSheet"], Keys((1, null, new Choice(Id(77)))));
    }

    [Fact]
    public void Of_TimeAtACountedLevel_IsFlagged()
    {
        var recorder = RecorderOf(Taught);
        var record = Taught.With(
            recorder.Put(Alba.Id, RopeId, 1, null, new Choice(RopeLevels[0].Id)),
            recorder.Put(Alba.Id, RopeId, 1, null, new Prediction(1, null)),
            recorder.Put(Alba.Id, RopeId, 1, 1, new Trial(true, 3)));
        Assert.Equal("HeldWithoutHold", Assert.Single(PupilSheetCheck.Of(record, Alba.Id)).Key);
    }

    [Fact]
    public void Of_AnyEntries_NeverRefusesAndSpeaksWholeSentences() =>
        Gen.Select(Gen.Int[-1, 5], Gen.Int[-1, 9], Gen.Int[0, 6], Gen.Double[-10, 700], Gen.Int[0, 4]).List[0, 12].Sample(said =>
        {
            var facts = said.Select(s => (s.Item1, s.Item5 == 2 ? s.Item2 : (int?)null, s.Item5 switch
            {
                0 => s.Item3 < 4 ? Level(s.Item3) : new Choice(Id(77)),
                1 => new Prediction(s.Item2, s.Item3 == 0 ? s.Item4 : null),
                2 => new Trial(s.Item3 % 2 == 0, s.Item3 < 3 ? s.Item4 : null),
                3 => new Decision((NextLevel)s.Item3),
                _ => (EntryFact)new CueTick(s.Item2, true),
            })).ToArray();
            var findings = Findings(facts);
            Assert.DoesNotContain(findings, f => f.IsRefused);
            Assert.All(findings, f => Assert.NotNull(f.OnSheet));
            Sentences.AreWhole(findings);
        });

    private static Choice Level(int index) => new(BalanceLevels[index].Id);

    private static IEnumerable<string> Keys(params (int Set, int? Trial, EntryFact Fact)[] facts) => KeysOf(Taught, facts);

    private static IEnumerable<string> KeysOf(LessonRecord record, params (int Set, int? Trial, EntryFact Fact)[] facts) => FindingsOf(record, facts).Select(f => f.Key);

    private static IReadOnlyList<Finding> Findings(params (int Set, int? Trial, EntryFact Fact)[] facts) => FindingsOf(Taught, facts);

    private static IReadOnlyList<Finding> FindingsOf(LessonRecord record, (int Set, int? Trial, EntryFact Fact)[] facts)
    {
        var recorder = RecorderOf(record);
        var entries = facts.Select(f => recorder.Put(Alba.Id, BalanceId, f.Set, f.Trial, f.Fact));
        return PupilSheetCheck.Of(record.With(entries), Alba.Id);
    }
}
