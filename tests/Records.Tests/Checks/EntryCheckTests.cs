using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Checks;

public sealed class EntryCheckTests
{
    private static readonly Choice FirstLevel = new(BalanceLevels[0].Id);

    [Fact]
    public void Of_GoodEntries_SaysNothing()
    {
        EntryFact[] ofSet = [FirstLevel, new Prediction(5, null), new Prediction(null, 600), new CueTick(3, true), new Decision(NextLevel.Same, "felt good")];
        Assert.All(ofSet, fact => Assert.Empty(Of(Made(fact))));
        Assert.Empty(Of(Made(new Trial(true, 600), trial: 5)));
        Assert.Empty(Of(Made(new Trial(false, 0), trial: 1)));
        Assert.Empty(Of(Made(new Presence(false)) with { TaskId = null, SetNumber = null }));
        Assert.Empty(Of(Made(new Visit(VisitTopic.Cue, VisitForm.Asked))));
        Assert.Empty(Of(Made(new TeacherCheck(1, true, true))));
        Assert.Empty(Of(Made(new PhaseMark(PhaseKind.Activity)) with { PupilId = null, TaskId = null, SetNumber = null }));
        Assert.All<EngagementScan>([new(0, 1), new(24, 27), new(200, 200)], scan => Assert.Empty(Of(OfLesson(scan))));
        Assert.Empty(Of(OfLesson(new Note("Ropes next week"))));
        Assert.Empty(Of(OfLesson(new Note(new string('a', 300))) with { TaskId = BalanceId }));
        Assert.Empty(Of(Made(new Note("left arm")) with { SetNumber = null }));
        Assert.Empty(Of(Made(new Note("left arm")) with { SetNumber = null, TaskId = null }));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, 20)]
    [InlineData(21, 20)]
    [InlineData(10, 201)]
    public void Of_LookThatCannotBe_IsRefused(int engagedCount, int presentCount) =>
        Assert.Equal("EntryScanOutside", Refused(OfLesson(new EngagementScan(engagedCount, presentCount))));

    [Fact]
    public void Of_LookOrNoteAboutTheWrongThing_IsRefused()
    {
        Assert.Equal("EntryPartsDoNotFit", Refused(Made(new EngagementScan(1, 2)) with { TaskId = null, SetNumber = null }));
        Assert.Equal("EntryPartsDoNotFit", Refused(OfLesson(new EngagementScan(1, 2)) with { TaskId = BalanceId }));
        Assert.Equal("EntryPartsDoNotFit", Refused(Made(new Note("left arm"))));
    }

    [Fact]
    public void Of_NoteWithoutOrWithTooMuchText_IsRefused()
    {
        Assert.Equal("EntryNoteEmpty", Refused(OfLesson(new Note(" "))));
        Assert.Equal("EntryTextTooLong", Refused(OfLesson(new Note(new string('a', 301)))));
        Assert.Equal("TextHasControl", Refused(OfLesson(new Note("a\u0007b"))));
    }

    [Fact]
    public void Of_UnknownPart_IsRefused()
    {
        Assert.Equal("EntryPupilUnknown", Refused(Made(FirstLevel) with { PupilId = Id(77) }));
        Assert.Equal("EntryTaskUnknown", Refused(Made(FirstLevel) with { TaskId = Id(77) }));
        Assert.Equal("EntryLevelUnknown", Refused(Made(new Choice(RopeLevels[0].Id))));
        Assert.Equal("EntrySetUnknown", Refused(Made(FirstLevel) with { SetNumber = 4 }));
        Assert.Equal("EntrySetUnknown", Refused(Made(FirstLevel) with { SetNumber = 0 }));
        Assert.Equal("EntryTrialUnknown", Refused(Made(new Trial(true), trial: 6)));
        Assert.Equal("EntryCueUnknown", Refused(Made(new CueTick(4, true))));
        Assert.Equal("EntryOfOtherLesson", Refused(Made(FirstLevel) with { LessonId = Id(77) }));
        Assert.Equal("EntryCorrectsUnknown", Refused(Made(FirstLevel) with { SupersedesId = Id(77) }));
        Assert.Equal("EntryCorrectsUnknown", Refused(Made(new Withdrawal())));
    }

    [Fact]
    public void Of_PartsThatDoNotFit_IsRefused()
    {
        Assert.Equal("EntryPartsDoNotFit", Refused(Made(FirstLevel, trial: 1)));
        Assert.Equal("EntryPartsDoNotFit", Refused(Made(new Trial(true))));
        Assert.Equal("EntryPartsDoNotFit", Refused(Made(FirstLevel) with { PupilId = null }));
        Assert.Equal("EntryPartsDoNotFit", Refused(Made(new Presence(true))));
    }

    [Theory]
    [InlineData(600.1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Of_TrialLongerThanTenMinutesOrNoTime_IsRefused(double heldS) =>
        Assert.Equal("EntryHeldOutside", Refused(Made(new Trial(true, heldS), trial: 1)));

    [Fact]
    public void Of_Predictions_AreHeldToTheTrials()
    {
        Assert.Equal("EntryPredictionNegative", Refused(Made(new Prediction(-1, null))));
        Assert.Equal("EntryPredictionEmpty", Refused(Made(new Prediction(null, null))));
        Assert.Equal("EntryPredictionEmpty", Refused(Made(new Prediction(1, 2))));
        Assert.Equal("EntryPredictionAboveTrials", Refused(Made(new Prediction(6, null))));

        // Typed from a sheet it is what the pupil wrote.
        var typed = Assert.Single(Of(Made(new Prediction(6, null)) with { Source = EntrySource.Desk }));
        Assert.Equal((FindingSeverity.Flagged, "EntryPredictionAboveTrials"), (typed.Severity, typed.Key));
    }

    [Fact]
    public void Of_ValuesOutOfTheirKind_IsRefused()
    {
        Assert.Equal("EntryValueUnknown", Refused(Made(new Decision((NextLevel)9))));
        Assert.Equal("EntryTextTooLong", Refused(Made(new Decision(NextLevel.Same, new string('x', 301)))));
        Assert.Equal("TextHasControl", Refused(Made(new Decision(NextLevel.Same, "a\0b"))));
        Assert.Equal("EntryDevice", Refused(Made(FirstLevel) with { DeviceId = "" }));
        Assert.Equal("EntrySequence", Refused(Made(FirstLevel) with { DeviceSequence = 0 }));
    }

    [Fact]
    public void Of_LevelNotOffered_IsFlaggedAndKept()
    {
        var record = Taught with { Restrictions = [new() { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Inversion }] };
        var finding = Assert.Single(EntryCheck.Of(Made(new Choice(BalanceLevels[3].Id)), record));
        Assert.Equal((FindingSeverity.Flagged, "ChoiceNotOffered"), (finding.Severity, finding.Key));
        Assert.Empty(EntryCheck.Of(Made(new Choice(BalanceLevels[3].Id)) with { PupilId = Bruno.Id }, record));
        Sentences.AreWhole([finding]);
    }

    [Fact]
    public void Of_LessonWithoutSheet_TakesPresenceOnly()
    {
        var record = Taught with { Sheet = null };
        Assert.Equal("EntryWithoutSheet", Assert.Single(EntryCheck.Of(Made(FirstLevel), record)).Key);
        Assert.Empty(EntryCheck.Of(Made(new Presence(true)) with { TaskId = null, SetNumber = null }, record));
    }

    private static Entry Made(EntryFact fact, int? trial = null) => new()
    {
        SchoolId = SchoolId, Id = Id(500), LessonId = LessonId, PupilId = Alba.Id, TaskId = BalanceId, SetNumber = 1, TrialNumber = trial,
        Fact = fact, Source = EntrySource.File, DeviceId = "test", DeviceSequence = 1, MadeAt = Clock.Now,
    };

    private static Entry OfLesson(EntryFact fact) => Made(fact) with { PupilId = null, TaskId = null, SetNumber = null };

    private static IReadOnlyList<Finding> Of(Entry entry) => EntryCheck.Of(entry, Taught);

    private static string Refused(Entry entry)
    {
        var findings = Of(entry);
        Sentences.AreWhole(findings);
        return Assert.Single(findings, f => f.IsRefused).Key;
    }
}
