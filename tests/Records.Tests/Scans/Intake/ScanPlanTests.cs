using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Scans.Intake;

public sealed class ScanPlanTests
{
    private static Scan ScanOf(Guid? pupilId, params string[] marks) => new()
    {
        SchoolId = SchoolId, Id = Id(900), File = "a.jpg", FilePage = 1, FormNumber = 1, PictureTag = 1, ReadAt = Clock.Now, CodeFound = CodeFound.Read,
        LessonId = LessonId, PupilId = pupilId, SheetVersion = 1, SheetPage = 1,
        Items = ScanItems.Of(PaperSheet.Layout, PaperSheet.Readings(PaperSheet.Layout, marks), Towers),
    };

    private static ScanPlan Plan(LessonRecord record, params string[] marks) => ScanPlan.Of(ScanOf(Alba.Id, marks), record, Taught.Sheet, Clock);

    private static Scan Answered(Scan scan, string key, decimal? value) =>
        scan with { Items = [.. scan.Items.Select(i => i.Key == key ? i with { Answer = new ScanAnswer(value, Clock.Now) } : i)] };

    private static ScanItem ItemOf(ScanPlan plan, string key) => plan.Scan.Items.Single(i => i.Key == key);

    private static Entry Typed(EntryFact fact, int? set = 1, int? trial = null) => RecorderOf(Taught, EntrySource.Desk).Put(Alba.Id, BalanceId, set, trial, fact)!;

    [Fact]
    public void Of_AWholeSet_GivesTheFactsThatWereMarked()
    {
        var plan = Plan(Taught, "Level-1-1-2", "Predicted-1-1-3", "Held-1-1-1", "NotYet-1-1-2", "Held-1-1-3", "Cue-1-1-2", "Next-1-1-2");
        Assert.Equal(ScanState.Done, plan.Scan.State);
        Assert.All(plan.Entries, e => Assert.Equal((EntrySource.Paper, Alba.Id, BalanceId, 1), (e.Source, e.PupilId!.Value, e.TaskId!.Value, e.SetNumber!.Value)));
        Assert.Equal(
            [
                (null, new Choice(BalanceLevels[1].Id)), (null, new Prediction(3)), (1, new Trial(true)), (2, new Trial(false)), (3, new Trial(true)),
                (null, new CueTick(1, false)), (null, new CueTick(2, true)), (null, new CueTick(3, false)), (null, new Decision(NextLevel.Harder)),
            ],
            plan.Entries.Select(e => (e.TrialNumber, e.Fact)));
    }

    [Fact]
    public void Of_NothingMarked_AddsNothingAndWaitsForNobody()
    {
        var plan = Plan(Taught);
        Assert.Empty(plan.Entries);
        Assert.Equal((ScanState.Done, ScanRemarkKind.NothingMarked), (plan.Scan.State, Assert.Single(plan.Scan.Remarks).Kind));
    }

    [Fact]
    public void Of_SetWithoutATickedCue_SaysNothingOfCues() =>
        Assert.DoesNotContain(Plan(Taught, "Level-1-1-1", "Held-1-1-1").Entries, e => e.Fact is CueTick);

    [Fact]
    public void Of_ADoubtfulMark_WaitsAndTheRestIsTaken()
    {
        var plan = Plan(Taught, "Level-1-1-1", "Held-1-1-1", "?Held-1-1-2");
        Assert.Equal(ScanState.Waiting, plan.Scan.State);
        Assert.Equal("Held-1-1-2", Assert.Single(plan.Scan.Waiting).Key);
        Assert.Equal([new Choice(BalanceLevels[0].Id), new Trial(true)], plan.Entries.Select(e => e.Fact));
    }

    [Fact]
    public void Of_TheSamePageAgain_AddsNothing()
    {
        string[] marks = ["Level-1-1-1", "Predicted-1-1-4", "Held-1-1-1", "Cue-1-1-1", "Next-1-1-1"];
        var once = Plan(Taught, marks);
        Assert.NotEmpty(once.Entries);
        var again = Plan(Taught.With(once.Entries), marks);
        Assert.Empty(again.Entries);
        Assert.Equal(ScanState.Done, again.Scan.State);
    }

    [Fact]
    public void Of_AMarkCorrectedAtTheDeskSince_IsNotTakenAgain()
    {
        var once = Plan(Taught, "Level-1-1-1", "Predicted-1-1-4");
        var record = Taught.With(once.Entries);
        var corrected = RecorderOf(record, EntrySource.Desk).Put(Alba.Id, BalanceId, 1, null, new Prediction(2));
        var withdrawn = RecorderOf(record, EntrySource.Desk).TakeBack(EntrySlot.Of(once.Entries[0]));
        var again = Plan(record.With(corrected, withdrawn), "Level-1-1-1", "Predicted-1-1-4");
        Assert.Empty(again.Entries);
        Assert.Empty(again.Scan.Waiting);
    }

    [Fact]
    public void Of_AnotherValueTypedBefore_IsNeverOverwrittenButAsked()
    {
        var plan = Plan(Taught.With(Typed(new Prediction(3))), "Level-1-1-1", "Predicted-1-1-4");
        Assert.DoesNotContain(plan.Entries, e => e.Fact is Prediction);
        var item = ItemOf(plan, "Predicted-1-1-0");
        Assert.Equal((ScanDoubt.Differs, 3m, 4m, true), (item.Doubt, item.Before, item.Value, item.IsWaiting));
    }

    [Fact]
    public void Of_TheSameTypedWithMore_IsLeftAsItIs()
    {
        var record = Taught.With(Typed(new Decision(NextLevel.Harder, "it was easy")), Typed(new Trial(true, 4.2), trial: 1), Typed(new Choice(BalanceLevels[0].Id)));
        var plan = Plan(record, "Level-1-1-1", "Held-1-1-1", "Next-1-1-2");
        Assert.Empty(plan.Entries);
        Assert.Empty(plan.Scan.Waiting);
    }

    [Fact]
    public void Of_AnAnswer_CorrectsWhatWasTyped()
    {
        var record = Taught.With(Typed(new Prediction(3)));
        var asked = Plan(record, "Level-1-1-1", "Predicted-1-1-4");
        var sheet = ScanPlan.Of(Answered(asked.Scan, "Predicted-1-1-0", 4), record, Taught.Sheet, Clock, "Predicted-1-1-0");
        Assert.Equal(record.Entries[0].Id, Assert.Single(sheet.Entries, e => e.Fact is Prediction { SuccessCount: 4 }).SupersedesId);
        var typed = ScanPlan.Of(Answered(asked.Scan, "Predicted-1-1-0", 3), record, Taught.Sheet, Clock, "Predicted-1-1-0");
        Assert.DoesNotContain(typed.Entries, e => e.Fact is Prediction);
        Assert.All([sheet, typed], p => Assert.Equal(ScanState.Done, p.Scan.State));
    }

    [Fact]
    public void Of_AnAnswerOfNothing_AddsNothing()
    {
        var asked = Plan(Taught, "?Held-2-1-1");
        var level = Answered(Answered(asked.Scan, "Held-2-1-1", null), "Level-2-1-0", null);
        var plan = ScanPlan.Of(level, Taught, Taught.Sheet, Clock, "Level-2-1-0");
        Assert.Empty(plan.Entries);
        Assert.Equal(ScanState.Done, plan.Scan.State);
    }

    [Fact]
    public void Of_AnsweredSeconds_GoIntoTheirTrial()
    {
        var scan = ScanOf(Alba.Id, "Level-1-1-2", "Held-1-1-1");
        scan = scan with { Items = [.. scan.Items, Seconds(1), Seconds(2), Seconds(3)] };
        var first = ScanPlan.Of(scan, Taught, Taught.Sheet, Clock);
        Assert.Equal(ScanState.Done, first.Scan.State);
        var record = Taught.With(first.Entries);
        var timed = ScanPlan.Of(Answered(first.Scan, "Seconds-1-1-1", 4.5m), record, Taught.Sheet, Clock, "Held-1-1-1");
        Assert.Equal(new Trial(true, 4.5), Assert.Single(timed.Entries).Fact);
        // Level 2 asks for 4 s: a time alone says whether it was reached.
        var unmarked = ScanPlan.Of(Answered(Answered(first.Scan, "Seconds-1-1-2", 3.9m), "Seconds-1-1-3", 4m), record, Taught.Sheet, Clock, "Held-1-1-2");
        Assert.Equal([new Trial(false, 3.9), new Trial(true, 4)], unmarked.Entries.Select(e => e.Fact));

        static ScanItem Seconds(int trial) => new() { Question = new SheetField(SheetFieldKind.Seconds, 1, 1, trial), Doubt = ScanDoubt.ByHand };
    }

    [Fact]
    public void Of_ALevelThePupilMayNotUse_IsEnteredAndPointedOut()
    {
        var record = Taught with { Restrictions = [new Restriction { SchoolId = SchoolId, Id = Id(70), PupilId = Alba.Id, Without = BodyDemand.Inversion }] };
        var plan = Plan(record, "Level-1-1-4");
        Assert.Equal(new Choice(BalanceLevels[3].Id), Assert.Single(plan.Entries).Fact);
        Assert.Equal("ChoiceNotOffered", Assert.Single(plan.Findings).Key);
    }

    [Fact]
    public void Of_APupilMarkedAbsent_IsHeldUntilConfirmed()
    {
        var record = Taught.With(RecorderOf(Taught, EntrySource.Desk).Put(Alba.Id, null, null, null, new Presence(false)));
        var held = Plan(record, "Level-1-1-1");
        Assert.Empty(held.Entries);
        Assert.Equal((ScanState.Waiting, ScanRemarkKind.MarkedAbsent), (held.Scan.State, Assert.Single(held.Scan.Remarks).Kind));
        var taken = ScanPlan.Of(held.Scan with { IsConfirmed = true }, record, Taught.Sheet, Clock);
        Assert.Equal([new Presence(true), new Choice(BalanceLevels[0].Id)], taken.Entries.Select(e => e.Fact));
        Assert.Equal(ScanState.Done, taken.Scan.State);
        Assert.Equal(ScanState.Done, Plan(record).Scan.State);
    }

    [Fact]
    public void Of_APupilOfAnotherClass_IsHeld()
    {
        var plan = ScanPlan.Of(ScanOf(Id(99), "Level-1-1-1"), Taught, Taught.Sheet, Clock);
        Assert.Empty(plan.Entries);
        Assert.Equal((ScanState.Waiting, ScanRemarkKind.NotInClass), (plan.Scan.State, Assert.Single(plan.Scan.Remarks).Kind));
    }

    [Fact]
    public void Of_AnOlderVersion_TakesByIdAndWordsWhatBothHave()
    {
        // The lesson's version now: the first level gone, the cues in another order and one of them new.
        var balance = Towers.Tasks[0] with { Levels = [.. BalanceLevels.Skip(1)], Cues = ["Hips level", "Breathe", "Look at one point"] };
        var record = Taught with
        {
            Lesson = Taught.Lesson with { SheetVersion = 2 },
            Sheet = Taught.Sheet! with { Version = 2, Content = Towers with { Tasks = [balance, Towers.Tasks[1]] } },
        };
        var plan = Plan(record, "Level-1-1-2", "Cue-1-1-1", "Level-1-2-1");
        Assert.Equal([new Choice(BalanceLevels[1].Id), new CueTick(3, true), new CueTick(1, false)], plan.Entries.Select(e => e.Fact));
        Assert.Equal(["Cue-1-1-2", "Level-1-2-0"], plan.Scan.Waiting.Select(i => i.Key).Order());
        Assert.All(plan.Scan.Waiting, i => Assert.Equal(ScanDoubt.NotOnSheet, i.Doubt));
    }

    [Fact]
    public void Of_AnObservationSheet_ChecksTheCuesOfItsRows()
    {
        var layout = PaperSheet.Layout with
        {
            Fields =
            [
                .. from row in new[] { 1, 2, 3 } from kind in new[] { SheetFieldKind.TeacherMet, SheetFieldKind.TeacherNotMet } select FieldOf(new SheetField(kind, 1, row, 2)),
                .. from row in new[] { 1, 2, 3 } from set in new[] { 1, 2, 3 } select FieldOf(new SheetField(SheetFieldKind.TeacherSet, 1, row, set)),
            ],
        };
        var scan = ScanOf(null) with
        {
            IsObservation = true, RowPupils = [Bruno.Id, Carys.Id, Alba.Id],
            Items = ScanItems.Of(layout, PaperSheet.Readings(layout, "TeacherMet-1-1-2", "TeacherSet-1-1-3", "TeacherNotMet-1-2-2", "TeacherSet-1-2-1", "TeacherMet-1-3-2"), Towers),
        };
        var plan = ScanPlan.Of(scan, Taught, Taught.Sheet, Clock);
        Assert.Equal(
            [(Bruno.Id, 3, new TeacherCheck(2, true, true)), (Carys.Id, 1, new TeacherCheck(2, false, true))],
            plan.Entries.Select(e => (e.PupilId!.Value, e.SetNumber!.Value, (TeacherCheck)e.Fact)));
        Assert.Empty(ScanPlan.Of(scan, Taught.With(plan.Entries), Taught.Sheet, Clock).Entries);
        // Nobody knows which set of Alba's was watched: the check waits for the answer.
        var item = Assert.Single(plan.Scan.Waiting);
        Assert.Equal(("TeacherSet-1-3-0", ScanDoubt.SetMissing), (item.Key, item.Doubt));
        var answered = ScanPlan.Of(Answered(plan.Scan, item.Key, 2), Taught.With(plan.Entries), Taught.Sheet, Clock, item.Key);
        Assert.Equal((Alba.Id, 2), (Assert.Single(answered.Entries).PupilId!.Value, answered.Entries[0].SetNumber!.Value));

        static Engines.Marks.MarkField FieldOf(SheetField field) => new(field.Key, field.Group, 0, 0, 5, 5, false);
    }

    // What paper gives is held to the same checks as every other way in.
    [Fact]
    public void Of_EveryEntry_PassesTheChecks() => Assert.All(
        Plan(Taught, "Level-1-1-2", "Predicted-1-1-3", "Held-1-1-1", "Cue-1-1-2", "Next-1-1-2", "Level-2-3-1", "NotYet-2-3-5").Entries,
        e => Assert.DoesNotContain(EntryCheck.Of(e, Taught), f => f.IsRefused));
}
