using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Schools;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence;

public sealed class LessonEvidenceTests
{
    private static readonly string[] Cues = ["push the floor away", "eyes on one point", "hips level"];

    // Ada fills in three sets, Ben forgets his level, Cem is absent, Dia writes nothing.
    private static LessonBuilder Small() => new LessonBuilder()
        .Pupils("Ada", "Ben", "Cem", "Dia")
        .Task(1, "One-foot balance", Cues, (1, 3, null), (2, 5, null), (3, 8, null))
        .Set("Ada", 1, level: 2, predicted: 4, tries: "1 1 0 1 0", cues: "1 2", decision: NextLevel.Same)
        .Set("Ada", 2, level: 2, predicted: 4, tries: "1 1 1 1 1", cues: "2 1", decision: NextLevel.Harder)
        .Set("Ada", 3, level: 3, predicted: 5, tries: "1 0 0 0 0", decision: NextLevel.Easier)
        .Set("Ben", 1, tries: "1 1 0")
        .Absent("Cem");

    private static PupilTaskEvidence Ada(LessonEvidence evidence) => evidence.Pupils.Single(p => p.Label == "Ada").Tasks.Single();

    [Fact]
    public void Of_SmallLesson_ReadsTheSetsInOrder()
    {
        var sets = Ada(LessonEvidence.Of(Small().Record())).Sets;

        Assert.Equal([1, 2, 3], sets.Select(s => s.SetNumber));
        Assert.Equal([2, 2, 3], sets.Select(s => s.LevelNumber!.Value));
        Assert.Equal([LevelId(1, 2), LevelId(1, 2), LevelId(1, 3)], sets.Select(s => s.LevelId!.Value));
        Assert.Equal([(3, 5), (5, 5), (1, 5)], sets.Select(s => (s.Success.SuccessCount, s.Success.TrialCount)));
        Assert.Equal([1, 2], sets[1].TickedCueNumbers);
        Assert.Equal([3], sets[1].UntickedCueNumbers);
        Assert.False(sets[2].AreCuesChecked);
        Assert.Empty(sets[2].UntickedCueNumbers);
        // Choice, prediction, five tries, two ticks, decision.
        Assert.Equal(10, sets[0].EntryIds.Count);
        Assert.All(sets, s => Assert.True(s.IsLevelOffered));
    }

    [Fact]
    public void Of_SmallLesson_CodesTheDecisions()
    {
        var ada = Ada(LessonEvidence.Of(Small().Record()));
        Assert.Equal(
            [DecisionPattern.Consolidate, DecisionPattern.Progress, DecisionPattern.Adjust], ada.Sets.Select(s => s.Pattern!.Value));
        Assert.Equal(new DecisionConsistency(3, 3, 0), ada.Decisions.Consistency);
        Assert.Equal([ada.Sets[1].DecisionEntryId!.Value], ada.Decisions.Patterns.Single(p => p.Pattern == DecisionPattern.Progress).EntryIds);
    }

    [Fact]
    public void Of_SmallLesson_ComparesPredictions()
    {
        // By hand: errors 4-3, 4-5, 5-1 = 1, -1, 4; mean 4/3, mean distance 2, 4 of 15 tries.
        var predictions = Ada(LessonEvidence.Of(Small().Record())).Predictions;
        Assert.Equal(3, predictions.PredictedSetCount);
        Assert.Equal(new PredictionBias(3, 4 / 3.0, 2, 4 / 15.0, PredictionDirection.Over), predictions.Counts);
        Assert.Null(predictions.Holds);
        Assert.Equal(18, predictions.EntryIds.Count);
    }

    [Fact]
    public void Of_SmallLesson_PoolsLevelsWithTheirRange()
    {
        var levels = LessonEvidence.Of(Small().Record()).Tasks.Single().Levels;

        Assert.Equal([1, 2, 3, null], levels.Select(l => l.LevelNumber));
        Assert.Equal([(0, 0), (8, 10), (1, 5), (2, 3)], levels.Select(l => (l.Success.SuccessCount, l.Success.TrialCount)));
        Assert.Equal([0, 1, 1, 1], levels.Select(l => l.TriedByPupilCount));
        Assert.Equal([0, 2, 1, 0], levels.Select(l => l.ChosenSetCount));
        Assert.Equal([0, 1, 0, 0], levels.Select(l => l.StartPupilCount));
        Assert.Equal([0, 0, 1, 0], levels.Select(l => l.LatestPupilCount));
        // By hand, z = 1.644854: centre (.8 + .135277)/1.270554 = .7361, half 1.644854 · √(.016 + .006764)/1.270554 = .1953.
        Assert.Equal(0.5408, levels[1].Success.LowFraction!.Value, 1e-4);
        Assert.Equal(0.9314, levels[1].Success.HighFraction!.Value, 1e-4);
        Assert.Null(levels[0].Success.LowFraction);
        Assert.False(levels[3].Success.HasEnoughTrials);
        Assert.Equal(SuccessReading.NotEnoughTries, levels[3].Success.Reading);
        // Two choices and ten tries.
        Assert.Equal(12, levels[1].EntryIds.Count);
    }

    [Fact]
    public void Of_SmallLesson_CountsOpenCuesOnlyWhereCuesWereChecked()
    {
        var evidence = LessonEvidence.Of(Small().Record());
        Assert.Equal([(0, 2, 0), (0, 2, 0), (2, 2, 1)], evidence.Tasks.Single().Cues.Select(c => (c.UntickedSetCount, c.CheckedSetCount, c.UntickedPupilCount)));
        Assert.Equal("hips level", Assert.Single(evidence.Class.CuesMostOftenOpen).Text);
    }

    [Fact]
    public void Of_SmallLesson_TellsAbsentFromUnwritten()
    {
        var evidence = LessonEvidence.Of(Small().Record());
        Assert.Equal([PupilId("Cem")], evidence.AbsentPupilIds);
        Assert.Equal([PupilId("Dia")], evidence.UnwrittenPupilIds);
        Assert.Equal((4, 2, 4, 18), (evidence.Class.PupilCount, evidence.Class.WrittenPupilCount, evidence.Class.SetCount, evidence.Class.TrialCount));
    }

    [Fact]
    public void Of_SmallLesson_SharesDecisionsByBand()
    {
        var after = LessonEvidence.Of(Small().Record()).Class.DecisionsAfter;
        Assert.Equal([SuccessBand.High, SuccessBand.Middle, SuccessBand.Low, SuccessBand.TooFew], after.Select(a => a.Band));
        Assert.Equal([(0, 1, 0), (1, 0, 0), (0, 0, 1), (0, 0, 0)], after.Select(a => (a.SameCount, a.HarderCount, a.EasierCount)));
    }

    [Fact]
    public void BestHold_NobodyTimed_IsAtLeastTheHardestDoseReached()
    {
        var best = Ada(LessonEvidence.Of(Small().Record())).BestHold!;
        Assert.Equal((8.0, true, 3, 3), (best.HeldS, best.IsLowerBound, best.SetNumber, best.LevelNumber));
    }

    [Fact]
    public void BestHold_TimedLonger_IsTheTimedTryAndItsEntry()
    {
        var lesson = Small().Set("Dia", 1, level: 2, tries: "4.2s 9.5s 1");
        var best = LessonEvidence.Of(lesson.Record()).Pupils.Single(p => p.Label == "Dia").Tasks.Single().BestHold!;
        Assert.Equal((9.5, false), (best.HeldS, best.IsLowerBound));
        Assert.Equal(lesson.Entries.Single(e => e.Fact is Trial { HeldS: 9.5 }).Id, best.EntryId);
    }

    [Fact]
    public void BestHold_HeldAsLongTwice_IsTheFirst()
    {
        var evidence = LessonEvidence.Of(Small().Set("Dia", 1, level: 2, tries: "6.0s").Set("Dia", 2, level: 3, tries: "6.0s").Record());
        Assert.Equal(1, evidence.Pupils.Single(p => p.Label == "Dia").Tasks.Single().BestHold!.SetNumber);
    }

    [Fact]
    public void BestHold_NothingHeldOrTimed_IsNone()
    {
        var evidence = LessonEvidence.Of(Small().Set("Dia", 1, level: 2, tries: "0 0 0").Record());
        Assert.Null(evidence.Pupils.Single(p => p.Label == "Dia").Tasks.Single().BestHold);
        // Ben held, but nobody knows at which level.
        Assert.Null(evidence.Pupils.Single(p => p.Label == "Ben").Tasks.Single().BestHold);
    }

    [Fact]
    public void Predictions_SetNotFinished_IsNotCompared()
    {
        var evidence = LessonEvidence.Of(Small().Set("Dia", 1, level: 2, predicted: 3, tries: "1 1 0").Record());
        var predictions = evidence.Pupils.Single(p => p.Label == "Dia").Tasks.Single().Predictions;
        Assert.Equal(1, predictions.PredictedSetCount);
        Assert.Null(predictions.Counts);
        Assert.Empty(predictions.EntryIds);
    }

    [Fact]
    public void Predictions_OfHolds_AreComparedWithTheTimedBestOnly()
    {
        var evidence = LessonEvidence.Of(Small()
            .Set("Dia", 1, level: 2, predictedS: 6, tries: "3.0s 4.5s")
            .Set("Dia", 2, level: 2, predictedS: 6, tries: "3.0s 1")
            .Record());
        var predictions = evidence.Pupils.Single(p => p.Label == "Dia").Tasks.Single().Predictions;
        Assert.Equal(new HoldPredictionBias(1, 1.5, 1.5, PredictionDirection.Over), predictions.Holds);
    }

    [Fact]
    public void Of_EmptyLog_HasEveryPupilAndAsksNobody()
    {
        var evidence = LessonEvidence.Of(new LessonBuilder().Pupils("Ada", "Ben").Task(1, "Balance", Cues, (1, 3, null)).Record());
        Assert.Equal(["Ada", "Ben"], evidence.Pupils.Select(p => p.Label));
        Assert.Equal(0, Assert.Single(evidence.Tasks.Single().Levels).TriedByPupilCount);
        Assert.Empty(evidence.Conferences);
        Assert.Equal(2, evidence.UnwrittenPupilIds.Count);
        Assert.Null(evidence.Class.Predictions.Counts);
    }

    [Fact]
    public void Of_NoSheet_KeepsWhatWasWritten()
    {
        var evidence = LessonEvidence.Of(Small().Record(withSheet: false));
        var task = Assert.Single(evidence.Tasks);
        Assert.Equal(("", 18), (task.Name, task.Levels.Sum(l => l.Success.TrialCount)));
        Assert.All(task.Levels, l => Assert.Null(l.LevelNumber));
        Assert.All(Ada(evidence).Sets, s => Assert.Null(s.IsLevelOffered));
    }

    [Fact]
    public void Of_TwoTasks_KeepsThemApart()
    {
        var evidence = LessonEvidence.Of(Small().Task(2, "V-sit", ["chest up"], (1, 3, null)).Set("Ada", 1, level: 1, tries: "1 1", cues: "1", task: 2).Record());
        Assert.Equal(["One-foot balance", "V-sit"], evidence.Tasks.Select(t => t.Name));
        Assert.Equal([18, 2], evidence.Tasks.Select(t => t.Levels.Sum(l => l.Success.TrialCount)));
        Assert.Equal([1, 2], evidence.Pupils.Single(p => p.Label == "Ada").Tasks.Select(t => t.TaskNumber));
    }

    [Fact]
    public void Of_PupilWhoLeft_CountsInThePoolOnly()
    {
        var lesson = Small();
        var record = lesson.Record();
        var evidence = LessonEvidence.Of(record with { Pupils = record.Pupils.Where(p => p.Code != "Ada").ToList() });
        Assert.Equal((8, 10), (evidence.Tasks[0].Levels[1].Success.SuccessCount, evidence.Tasks[0].Levels[1].Success.TrialCount));
        Assert.DoesNotContain(evidence.Pupils, p => p.PupilId == PupilId("Ada"));
        Assert.DoesNotContain(evidence.Conferences, c => c.PupilId == PupilId("Ada"));
    }

    [Fact]
    public void Of_EntryWithoutItsSet_IsListedAsUncounted()
    {
        var lesson = Small();
        var stray = lesson.Add("Ada", 1, null, new Trial(true), trial: 1);
        Assert.Equal([stray.Id], LessonEvidence.Of(lesson.Record()).UncountedEntryIds);
        Assert.Empty(LessonEvidence.Of(Small().Record()).UncountedEntryIds);
    }

    [Fact]
    public void Of_LooksAndNotes_AreNotUncountedAndAPupilsNotesStandWithThePupil()
    {
        var lesson = Small();
        lesson.Add(null, null, null, new EngagementScan(24, 27));
        lesson.Add(null, null, null, new Note("ropes next week"));
        var own = lesson.Add("Ada", 1, null, new Note("left arm"));
        var evidence = LessonEvidence.Of(lesson.Record());
        Assert.Empty(evidence.UncountedEntryIds);
        Assert.Equal([own.Id], evidence.Pupils.SelectMany(p => p.Notes).Select(n => n.EntryId));
        Assert.Equal(("left arm", own.TaskId), (evidence.Pupils.Single(p => p.Label == "Ada").Notes[0].Text, evidence.Pupils.Single(p => p.Label == "Ada").Notes[0].TaskId));
    }

    [Fact]
    public void Of_TeacherChecks_AgreeOrNotWithTheTicks()
    {
        var lesson = Small();
        lesson.Add("Ada", 1, 1, new TeacherCheck(1, true, true));
        lesson.Add("Ada", 1, 1, new TeacherCheck(2, false, true));
        lesson.Add("Ada", 1, 1, new TeacherCheck(3, false, true));
        // No cue was checked by the pupil in set 3: there is nothing to agree with.
        lesson.Add("Ada", 1, 3, new TeacherCheck(1, true, true));
        var evidence = LessonEvidence.Of(lesson.Record());
        Assert.Equal(new TickAgreement(1, 1, 0, 1), evidence.Class.TickAgreement);
        Assert.Equal(3, evidence.Class.CheckEntryIds.Count);
        Assert.Null(Ada(evidence).Sets[2].Checks.Single().IsTickedByPupil);
    }

    [Fact]
    public void LevelTalk_TwelveRemarksByHand_IsThreeQuartersNeutral()
    {
        // By hand: 9 neutral of 12; 2 judgements and 1 correction to reread. Talks about cues do not count.
        var lesson = Small();
        VisitForm[] forms = [.. Enumerable.Repeat(VisitForm.Asked, 5), .. Enumerable.Repeat(VisitForm.Described, 4), VisitForm.Valued, VisitForm.Valued, VisitForm.Corrected];
        foreach (var form in forms) lesson.Add("Ada", null, null, new Visit(VisitTopic.Decision, form));
        lesson.Add("Ada", null, null, new Visit(VisitTopic.Cue, VisitForm.Corrected));
        var evidence = LessonEvidence.Of(lesson.Record());
        Assert.Equal((12, 0.75, 3), (evidence.Class.LevelTalk.RemarkCount, evidence.Class.LevelTalk.NeutralFraction, evidence.Class.LevelTalk.EntryIdsToReread.Count));
        Assert.Equal(13, evidence.Pupils.Single(p => p.Label == "Ada").Visits.Count);
    }

    [Fact]
    public void Levels_RuledOutForAPupil_AreNotOffered()
    {
        var lesson = new LessonBuilder().Pupils("Ada", "Ben")
            .Task(1, "Forward roll", Cues, (1, 3, null), (2, 5, BodyDemand.Roll))
            .Restrict("Ada", BodyDemand.Roll)
            .Set("Ada", 1, level: 2, tries: "1 1").Set("Ben", 1, level: 2, tries: "1 1");
        var sets = LessonEvidence.Of(lesson.Record()).Pupils.Select(p => p.Tasks.Single().Sets.Single()).ToList();
        Assert.Equal([false, true], sets.Select(s => s.IsLevelOffered!.Value));
    }
}
