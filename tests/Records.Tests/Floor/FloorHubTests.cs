using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tests.Stores;

namespace Slantwise.Records.Tests.Floor;

public sealed class FloorHubTests
{
    [Theory, EachDatabase]
    public async Task Open_LessonNotPrepared_FreezesItsSheetAndMakesACode(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        var record = (await LessonRecord.LoadAsync(open.Store, open.School.Id, open.LessonId))!;
        Assert.Equal(1, record.Sheet!.Version);
        Assert.Equal(JoinCode.Length, open.Lesson.Code.Length);
        Assert.All(open.Lesson.Code, c => Assert.Contains(c, JoinCode.Alphabet));
        Assert.Equal(TimeSpan.FromMinutes(90), open.Lesson.CodeUntil - open.Lesson.OpenedAt);

        var again = await open.Hub.OpenAsync(open.School.Id, open.LessonId);
        Assert.Equal(open.Lesson.Code, again.Code);
    }

    [Fact]
    public async Task Open_LessonWithoutASheet_IsRefused()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var bare = open.School.Lesson with { Id = EntryId.New(open.Clock), SheetId = null, SheetVersion = null };
        await open.Store.SaveLessonAsync(bare);
        await RefusedAsync(FloorProblemKind.LessonWithoutSheet, () => open.Hub.OpenAsync(open.School.Id, bare.Id));
        await RefusedAsync(FloorProblemKind.LessonWithoutSheet, () => open.Hub.OpenAsync(open.School.Id, EntryId.New(open.Clock)));
    }

    [Theory, EachDatabase]
    public async Task Open_ACodeThatAnotherLessonHas_DrawsAgain(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        var second = open.School.Lesson with { Id = EntryId.New(open.Clock), SheetVersion = 1 };
        await open.Store.SaveLessonAsync(second);
        // A hub that draws the same characters from the start: the first lesson's code comes up first.
        var (draw, drawn) = (OpenLesson.Draws(), 0);
        await using var twin = new FloorHub(open.Store, open.Clock, Counted, "1.0");
        var lesson = await twin.OpenAsync(open.School.Id, second.Id);
        Assert.NotEqual(open.Lesson.Code, lesson.Code);
        Assert.Equal(2 * JoinCode.Length, drawn);
        Assert.Equal((await twin.JoinByCodeAsync(open.School.Id, new("tablet", FloorDeviceKind.Station, lesson.Code))).Of.LessonId, second.Id);

        int Counted(int most)
        {
            drawn++;
            return draw(most);
        }
    }

    [Fact]
    public async Task JoinByCode_TypedAsAChildTypes_Joins()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var typed = $" {open.Lesson.Code[..3].ToLowerInvariant()} - {open.Lesson.Code[3..]} ";
        var member = await open.Hub.JoinByCodeAsync(open.School.Id, new("tablet-1", FloorDeviceKind.Pupil, typed));
        var answer = member.Joined("token");
        Assert.Equal(["Ñandú 2 🤸", "Ñandú 3 🤸", "P01"], answer.Pupils.Select(p => p.Label).Order(StringComparer.Ordinal).OrderBy(l => l == "P01"));
        Assert.Equal("1", answer.State.DeviceName);
    }

    [Theory, EachDatabase]
    public async Task JoinByCode_WrongExpiredRenewedOrClosed_SaysWhich(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        Task JoinAsync(string code, FloorDeviceKind kind = FloorDeviceKind.Pupil) => open.Hub.JoinByCodeAsync(open.School.Id, new("tablet-1", kind, code));

        await RefusedAsync(FloorProblemKind.CodeUnknown, () => JoinAsync("ZZZZZZ"));
        await RefusedAsync(FloorProblemKind.CodeUnknown, () => JoinAsync(""));
        await RefusedAsync(FloorProblemKind.NotAllowed, () => JoinAsync(open.Lesson.Code, FloorDeviceKind.Teacher));
        await RefusedAsync(FloorProblemKind.NotAllowed, () => JoinAsync(open.Lesson.Code, FloorDeviceKind.Board));
        open.Clock.Now = open.Lesson.CodeUntil.AddSeconds(1);
        await RefusedAsync(FloorProblemKind.CodeExpired, () => JoinAsync(open.Lesson.Code));
        var renewed = await open.Hub.RenewCodeAsync(open.School.Id, open.LessonId);
        await RefusedAsync(FloorProblemKind.CodeUnknown, () => JoinAsync(open.Lesson.Code));
        await JoinAsync(renewed.Code);
        await open.Hub.CloseAsync(open.School.Id, open.LessonId);
        await RefusedAsync(FloorProblemKind.LessonClosed, () => JoinAsync(renewed.Code));
        await RefusedAsync(FloorProblemKind.LessonClosed, () => open.Hub.RenewCodeAsync(open.School.Id, open.LessonId));
        await open.Hub.OpenAsync(open.School.Id, open.LessonId);
        await JoinAsync(renewed.Code);
    }

    [Fact]
    public async Task State_OfTeacherAndBoard_TellsTheCodeThatHoldsAndNobodyElsesDoes()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var (board, teacher) = (await open.JoinAsync("board", FloorDeviceKind.Board), await open.JoinAsync("phone", FloorDeviceKind.Teacher));
        FloorMember[] others = [await open.PupilAsync("tablet-1", 0), await open.JoinAsync("tablet-2", FloorDeviceKind.Station)];
        Assert.Equal((open.Lesson.Code, (DateTimeOffset?)open.Lesson.CodeUntil), (board.State.JoinCode, board.State.JoinCodeUntil));

        var renewed = await open.Hub.RenewCodeAsync(open.School.Id, open.LessonId);
        Assert.Equal([renewed.Code, renewed.Code], [board.State.JoinCode, teacher.State.JoinCode]);
        Assert.All(others, o => Assert.Null(o.State.JoinCode));
        await open.Hub.CloseAsync(open.School.Id, open.LessonId);
        Assert.Null(board.State.JoinCode);
    }

    [Fact]
    public async Task Join_TheSameDeviceAgain_IsTheSameDeviceUnlessItIsAnotherKind()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        await open.PupilAsync("tablet-1", 0);
        var again = await open.JoinAsync("tablet-1");
        Assert.Equal([open.School.Pupils[0].Id], again.State.PupilIds);
        await RefusedAsync(FloorProblemKind.DeviceIdTaken, () => open.JoinAsync("tablet-1", FloorDeviceKind.Station));
        await RefusedAsync(FloorProblemKind.BodyUnreadable, () => open.JoinAsync(new string('x', 41)));
        await RefusedAsync(FloorProblemKind.BodyUnreadable, () => open.JoinAsync(" "));
        Assert.Single((await open.Hub.FindAsync(open.School.Id, open.LessonId))!.Devices);
    }

    [Fact]
    public async Task Join_MoreDevicesThanALessonTakes_IsRefused()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        for (var i = 1; i <= FloorRoom.MostDeviceCount; i++) await open.JoinAsync($"tablet-{i}");
        await RefusedAsync(FloorProblemKind.LessonFull, () => open.JoinAsync("one-more"));
        await open.JoinAsync("tablet-1");
    }

    [Fact]
    public async Task Claim_AsManyAsTheKindServes_ElseIsRefused()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var ids = open.School.Pupils.Select(p => p.Id).ToList();
        var pupil = await open.JoinAsync("a");
        var pair = await open.JoinAsync("b", FloorDeviceKind.Pair);
        var station = await open.JoinAsync("c", FloorDeviceKind.Station);
        await RefusedAsync(FloorProblemKind.PupilCount, () => pupil.ClaimAsync(new([])));
        await RefusedAsync(FloorProblemKind.PupilCount, () => pupil.ClaimAsync(new([ids[0], ids[1]])));
        await RefusedAsync(FloorProblemKind.PupilCount, () => pair.ClaimAsync(new([ids[0], ids[0]])));
        await RefusedAsync(FloorProblemKind.PupilCount, () => station.ClaimAsync(new([ids[0]])));
        // The fourth has left the class.
        await RefusedAsync(FloorProblemKind.PupilUnknown, () => pupil.ClaimAsync(new([ids[3]])));
        await pair.ClaimAsync(new([ids[0], ids[1]]));
        await pupil.ClaimAsync(new([ids[0]]));
        await station.ClaimAsync(new([]));
        Assert.Equal(3, (await open.Hub.FindAsync(open.School.Id, open.LessonId))!.Devices.Count);
        Assert.Equal(2, pupil.Joined("t").Pupils.Count(p => p.IsServed));
    }

    [Theory, EachDatabase]
    public async Task Orders_AfterARestart_AreStillThere(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        await open.PupilAsync("tablet-1", 0);
        var teacher = await open.JoinAsync("phone", FloorDeviceKind.Teacher);
        await teacher.OrderDeviceAsync("tablet-1", new DeviceOrder(Name: " Tablet 4 ", IsLocked: true));
        await teacher.OrderLessonAsync(new LessonOrder(IsStopped: true, CountdownS: 60));
        var before = (await open.Hub.FindAsync(open.School.Id, open.LessonId))!;

        await open.RestartAsync();

        var after = (await open.Hub.FindAsync(open.School.Id, open.LessonId))!;
        Assert.Equal(before.Lesson, after.Lesson);
        Assert.Equal(before.Devices.Select(d => (d.DeviceId, d.Name, d.IsLocked, d.HasLeft)), after.Devices.Select(d => (d.DeviceId, d.Name, d.IsLocked, d.HasLeft)));
        Assert.All(after.Devices, d => Assert.Null(d.SeenAt));
        var state = (await open.Hub.MemberAsync(open.School.Id, open.LessonId, "tablet-1")).State;
        Assert.Equal(("Tablet 4", true), (state.DeviceName, state.IsLocked));
        Assert.NotNull(state.StoppedAt);
    }

    [Fact]
    public async Task Orders_NotTheTeachers_AreRefused()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("tablet-1", 0);
        var teacher = await open.JoinAsync("phone", FloorDeviceKind.Teacher);
        await open.JoinAsync("phone-2", FloorDeviceKind.Teacher);
        await RefusedAsync(FloorProblemKind.NotAllowed, () => tablet.OrderLessonAsync(new LessonOrder(IsStopped: true)));
        await RefusedAsync(FloorProblemKind.NotAllowed, () => tablet.OrderDeviceAsync("phone", new DeviceOrder(IsLocked: true)));
        await RefusedAsync(FloorProblemKind.NotAllowed, () => teacher.OrderDeviceAsync("phone", new DeviceOrder(IsLocked: true)));
        await RefusedAsync(FloorProblemKind.DeviceUnknown, () => teacher.OrderDeviceAsync("nobody", new DeviceOrder(IsLocked: true)));
        await RefusedAsync(FloorProblemKind.NameLength, () => teacher.OrderDeviceAsync("tablet-1", new DeviceOrder(Name: "  ")));
        await RefusedAsync(FloorProblemKind.BodyUnreadable, () => teacher.OrderLessonAsync(new LessonOrder(CountdownS: 3601)));
        await open.Hub.OrderDeviceAsync(open.School.Id, open.LessonId, "phone-2", new DeviceOrder(IsLocked: true));
        var lost = await open.Hub.MemberAsync(open.School.Id, open.LessonId, "phone-2");
        await RefusedAsync(FloorProblemKind.NotAllowed, () => lost.OrderLessonAsync(new LessonOrder(IsStopped: true)));
    }

    [Fact]
    public async Task Rooms_NobodyUses_AreDroppedFromMemory()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        await open.JoinAsync("tablet-1");
        Assert.Equal(1, open.Hub.RoomCount);
        open.Clock.Now += TimeSpan.FromMinutes(11);
        Assert.Null(await open.Hub.FindAsync(open.School.Id, EntryId.New(open.Clock)));
        Assert.Equal(0, open.Hub.RoomCount);
        Assert.NotNull(await open.Hub.FindAsync(open.School.Id, open.LessonId));
    }

    [Fact]
    public async Task Rooms_SomebodyListensTo_Stay()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        using var watch = (await open.JoinAsync("tablet-1")).Watch();
        open.Clock.Now += TimeSpan.FromMinutes(11);
        await open.Hub.FindAsync(open.School.Id, EntryId.New(open.Clock));
        Assert.Equal(1, open.Hub.RoomCount);
    }

    [Fact]
    public async Task Bundle_RestrictionAddedInTheLesson_LeavesTheLevelOut()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("tablet-1", 1);
        var before = await tablet.BundleAsync(CultureInfo.GetCultureInfo("en"));
        await open.Store.SaveRestrictionAsync(open.School.Restriction with { Id = EntryId.New(open.Clock), PupilId = open.School.Pupils[1].Id });
        var after = await tablet.BundleAsync(CultureInfo.GetCultureInfo("en"));
        Assert.Equal(2, before.Pupils.Single().Offers.Single().LevelIds.Count);
        Assert.Single(after.Pupils.Single().Offers.Single().LevelIds);
    }

    [Fact]
    public async Task Bundle_OfADeviceThatServesNobody_IsRefused()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.JoinAsync("tablet-1");
        await RefusedAsync(FloorProblemKind.PupilCount, () => tablet.BundleAsync(CultureInfo.InvariantCulture));
    }

    internal static async Task RefusedAsync(FloorProblemKind kind, Func<Task> work) => Assert.Equal(kind, (await Assert.ThrowsAsync<FloorRefusal>(work)).Kind);
}
