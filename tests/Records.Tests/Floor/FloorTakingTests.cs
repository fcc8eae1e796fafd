using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;
using Slantwise.Records.Roster;
using Slantwise.Records.Tests.Stores;
using static Slantwise.Records.Tests.Floor.FloorHubTests;
using static Slantwise.Records.Tests.Floor.OpenLesson;

namespace Slantwise.Records.Tests.Floor;

public sealed class FloorTakingTests
{
    [Theory, EachDatabase]
    public async Task Take_TheSameBatchAgain_IsAcknowledgedAndKeptOnce(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        var tablet = await open.PupilAsync("t", 1);
        Entry[] entries = [open.Entry("t", 1, new Trial(true), 1), open.Entry("t", 1, new Trial(false, 2.5), 2)];
        var first = await TakeAsync(tablet, entries);
        var again = await TakeAsync(tablet, [.. entries, entries[0]]);
        await open.RestartAsync();
        var after = await TakeAsync(await open.Hub.MemberAsync(open.School.Id, open.LessonId, "t"), entries);
        foreach (var answer in new[] { first, again, after })
        {
            Assert.Equal(entries.Select(e => e.Id), answer.TakenIds);
            Assert.Empty(answer.Refused);
        }
        Assert.Equal(entries.Select(e => e.Id).Order(), (await open.KeptAsync()).Select(e => e.Id).Order());
    }

    [Theory, EachDatabase]
    public async Task Take_CorrectionBeforeWhatItCorrects_LeadsToTheSame(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        var tablet = await open.PupilAsync("t", 1);
        var first = open.Entry("t", 1, new Trial(true), 1);
        var second = open.Entry("t", 1, new Trial(false), 1, first.Id);
        var third = open.Entry("t", 1, new Withdrawal(), 1, second.Id);
        var other = open.Entry("t", 1, new Trial(true), 2);
        foreach (var entry in new[] { third, other, second, first }) Assert.Equal([entry.Id], (await TakeAsync(tablet, entry)).TakenIds);
        Assert.Equal([other.Id], EntryLog.Current(await open.KeptAsync()).Select(e => e.Id));
    }

    [Fact]
    public async Task Take_WithdrawalOfNothing_IsRefused()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var answer = await TakeAsync(await open.PupilAsync("t", 1), open.Entry("t", 1, new Withdrawal(), 1));
        Assert.Equal("EntryCorrectsUnknown", Assert.Single(answer.Refused).Reason);
    }

    [Fact]
    public async Task Take_BadOnesAmongGoodOnes_RefusesThemAlone()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 1);
        var good = open.Entry("t", 1, new Trial(true), 1);
        (Entry Entry, string Reason)[] bad =
        [
            (open.Entry("t", 1, new Trial(true), 9), "EntryTrialUnknown"),
            (open.Entry("t", 1, new Trial(true, 601), 1), "EntryHeldOutside"),
            (open.Entry("t", 1, new Trial(true), 1) with { LessonId = EntryId.New(open.Clock) }, "EntryOfOtherLesson"),
            (open.Entry("t", 1, new Trial(true), 1) with { Source = EntrySource.Desk }, "EntryNotFromFloor"),
            (open.Entry("t", 1, new Trial(true), 1) with { DeviceId = "u" }, "EntryOfOtherDevice"),
            (open.Entry("t", 2, new Trial(true), 1), "EntryPupilNotServed"),
            (open.Entry("t", 1, new Visit(VisitTopic.Cue, VisitForm.Asked)), "EntryKindNotForDevice"),
            (open.Entry("t", null, new PhaseMark(PhaseKind.Activity)), "EntryKindNotForDevice"),
            (open.Entry("t", 1, new Choice(Guid.Empty)), "EntryLevelUnknown"),
            (open.Entry("t", 1, new Trial(true), 2) with { Id = good.Id }, "EntryIdTaken"),
        ];
        var answer = await TakeAsync(tablet, [.. bad.Take(5).Select(b => b.Entry), good, .. bad.Skip(5).Select(b => b.Entry)]);
        Assert.Equal([good.Id], answer.TakenIds);
        Assert.Equal(bad.Select(b => (b.Entry.Id, b.Reason)), answer.Refused.Select(r => (r.Id, r.Reason)));
        Assert.All(answer.Refused, r => Assert.True(r.Text.Length > 20, r.Text));
        Assert.DoesNotContain(open.School.Pupils[2].Label, answer.Refused.Single(r => r.Reason == "EntryPupilNotServed").Text);
        Assert.Equal([good.Id], (await open.KeptAsync()).Select(e => e.Id));
    }

    [Fact]
    public async Task Take_ByRole_IsWhatTheRoleWrites()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var station = await open.JoinAsync("s", FloorDeviceKind.Station);
        var teacher = await open.JoinAsync("p", FloorDeviceKind.Teacher);
        var board = await open.JoinAsync("b", FloorDeviceKind.Board);
        Assert.Empty((await TakeAsync(station, open.Entry("s", 0, new Presence(true)), open.Entry("s", 2, new Trial(true), 1))).Refused);
        Assert.Equal("EntryPupilUnknown", (await TakeAsync(station, open.Entry("s", 2, new Trial(true), 2) with { PupilId = EntryId.New(open.Clock) })).Refused.Single().Reason);
        Assert.Empty((await TakeAsync(
            teacher,
            open.Entry("p", 1, new Visit(VisitTopic.Cue, VisitForm.Asked)), open.Entry("p", null, new PhaseMark(PhaseKind.Activity)),
            open.Entry("p", 1, new TeacherCheck(1, true, true)), open.Entry("p", null, new EngagementScan(2, 3)), open.Entry("p", null, new Note("mats")),
            // What a tablet without a network handed over.
            open.Entry("t", 1, new Trial(true), 1))).Refused);
        await RefusedAsync(FloorProblemKind.NotAllowed, () => TakeAsync(board, open.Entry("b", 1, new Trial(true), 2)));
        Assert.Empty((await TakeAsync(board)).TakenIds);
        Assert.Equal(8, (await open.KeptAsync()).Count);
    }

    [Fact]
    public async Task Take_ACorrectionOfSomebodyElses_IsRefused()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var (one, two) = (await open.PupilAsync("t", 1), await open.PupilAsync("u", 2));
        var teacher = await open.JoinAsync("p", FloorDeviceKind.Teacher);
        var (own, check) = (open.Entry("t", 1, new Trial(true), 1), open.Entry("p", 2, new TeacherCheck(1, true, true)));
        await TakeAsync(one, own);
        await TakeAsync(teacher, check);
        var answer = await TakeAsync(two, open.Entry("u", 2, new Withdrawal(), 1, own.Id), open.Entry("u", 2, new Withdrawal(), null, check.Id));
        Assert.Equal(["EntryCorrectsForeign", "EntryCorrectsForeign"], answer.Refused.Select(r => r.Reason));
        Assert.Equal(2, EntryLog.Current(await open.KeptAsync()).Count);
    }

    [Fact]
    public async Task Take_WhenFreedLockedOrClosed_StillTakesWhatIsDelivered()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 1);
        await open.Hub.OrderDeviceAsync(open.School.Id, open.LessonId, "t", new DeviceOrder(IsLocked: true, IsFreed: true));
        await open.Hub.CloseAsync(open.School.Id, open.LessonId);
        var answer = await TakeAsync(tablet, open.Entry("t", 1, new Trial(true), 1));
        Assert.Single(answer.TakenIds);
        Assert.Empty(answer.State.PupilIds);
        Assert.NotNull(answer.State.ClosedAt);
        await RefusedAsync(FloorProblemKind.LessonClosed, () => tablet.ClaimAsync(new([open.School.Pupils[1].Id])));
        await tablet.LeaveAsync();
        Assert.Single((await TakeAsync(tablet, open.Entry("t", 1, new Trial(true), 2))).TakenIds);
    }

    [Fact]
    public async Task Take_MoreThanABatch_IsRefusedAsAWhole()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 1);
        var many = Enumerable.Range(0, EntryBatch.MostEntryCount + 1).Select(_ => open.Entry("t", 1, new Trial(true), 1)).ToList();
        await RefusedAsync(FloorProblemKind.BatchTooLarge, () => TakeAsync(tablet, many));
        Assert.Empty(await open.KeptAsync());
    }

    [Theory, EachDatabase]
    public async Task Take_PupilErasedMeanwhile_RefusesThatPupilsAlone(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        var station = await open.JoinAsync("s", FloorDeviceKind.Station);
        await TakeAsync(station, open.Entry("s", 1, new Trial(true), 1));
        await open.Store.ErasePupilAsync(open.School.Id, open.School.Pupils[2].Id);
        // By another device in the same commit, too.
        var (with, without) = (open.Entry("s", 2, new Trial(true), 1), open.Entry("s", 1, new Trial(true), 2));
        var answer = await TakeAsync(station, with, without);
        Assert.Equal([without.Id], answer.TakenIds);
        Assert.Equal([(with.Id, "EntryPupilUnknown")], answer.Refused.Select(r => (r.Id, r.Reason)));
    }

    [Fact]
    public async Task Take_PupilWhoLeftTheClassSince_IsTaken()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 1);
        var moved = open.School.Roster.Enrolments.Single(e => e.PupilId == open.School.Pupils[1].Id) with { IsCurrent = false };
        await open.Store.SaveRosterAsync(open.School.Id, new RosterSave { Enrolments = [moved] });
        await open.RestartAsync();
        Assert.Single((await TakeAsync(await open.Hub.MemberAsync(open.School.Id, open.LessonId, "t"), open.Entry("t", 1, new Trial(true), 1))).TakenIds);
    }

    [Fact]
    public async Task Take_PupilWhoJoinedTheClassSince_IsTaken()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var station = await open.JoinAsync("s", FloorDeviceKind.Station);
        var newcomer = open.School.Pupils[0] with { Id = EntryId.New(open.Clock), Code = "NEW", RosterKey = null };
        await open.Store.SaveRosterAsync(open.School.Id, new RosterSave
        {
            Pupils = [newcomer],
            Enrolments = [new() { SchoolId = open.School.Id, ClassId = open.School.Class.Id, PupilId = newcomer.Id }],
        });
        Assert.Single((await TakeAsync(station, open.Entry("s", 0, new Trial(true), 1) with { PupilId = newcomer.Id })).TakenIds);
    }

    [Fact]
    public async Task Take_AnIdOfAnotherLesson_IsRefusedAndNotSilentlyLost()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var other = open.School.Lesson with { Id = EntryId.New(open.Clock), SheetVersion = 1 };
        await open.Store.SaveLessonAsync(other);
        var tablet = await open.PupilAsync("t", 1);
        var entry = open.Entry("t", 1, new Trial(true), 1);
        await open.Store.AppendEntriesAsync(open.School.Id, [entry with { LessonId = other.Id }]);
        var answer = await TakeAsync(tablet, entry);
        Assert.Empty(answer.TakenIds);
        Assert.Equal("EntryIdTaken", Assert.Single(answer.Refused).Reason);
    }
}
