using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Storage.Sqlite;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>A level that is taken from a pupil: their screens do not know it, and what is typed about it all the same is on the teacher's phone at once.</summary>
public sealed class BreachTests(Browser browser, DemoFolder demo)
{
    [Fact]
    public async Task Level_Removed_IsOnNoScreenOfThePupilAndItsEntryWarnsThePhone()
    {
        await using var gym = await Gym.OpenAsync(demo, prepare: RestrictAsync);
        var (floor, pupil, model) = (gym.Served.Address, gym.Record.Pupils[0], new Acknowledged());
        var content = gym.Record.Sheet!.Content;
        var removed = content.Tasks.Select(t => (Task: t, Levels: t.Levels.Where(l => !gym.LevelsOf(pupil.Id, t.TaskId).Contains(l.Id)).ToList())).Where(t => t.Levels.Count > 0).ToList();
        var names = removed.SelectMany(t => t.Levels.Where(l => content.Tasks.SelectMany(o => o.Levels).Count(o => o.Name == l.Name) == 1).Select(l => l.Name)).ToList();
        Assert.NotEmpty(names);

        // Their own tablet, through a set of each task of which a level is gone, and its disk.
        var tablet = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync()), gym, FloorDeviceKind.Pupil, model);
        await tablet.JoinAsync(floor, [pupil.Id]);
        var disk = await tablet.AskAsync<string>("walk.disk()");
        foreach (var level in removed.SelectMany(t => t.Levels)) Assert.DoesNotContain(level.Id.ToString(), disk, StringComparison.OrdinalIgnoreCase);
        foreach (var level in names) Assert.DoesNotContain(level, disk, StringComparison.Ordinal);
        await WalkAsync(tablet);

        // A station, where others may see it.
        var station = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync()), gym, FloorDeviceKind.Station, model);
        await station.JoinAsync(floor, [pupil.Id]);
        await station.TurnToAsync(pupil.Id);
        await WalkAsync(station);
        await Task.WhenAll(tablet.SentAsync(), station.SentAsync());

        // The teacher types a sheet at the desk: a level that this pupil does not have. The phone says so without being asked.
        var phone = new FloorPhone(await FloorPage.ReadyAsync(await browser.NewPageAsync(new() { ViewportSize = new() { Width = 390, Height = 740 }, Locale = "en-GB" })), gym, model);
        await phone.JoinAsync(floor);
        Assert.Equal(0, await phone.CountAsync(".safety-news"));
        var (task, offered) = (removed[0].Task, gym.LevelsOf(pupil.Id, removed[0].Task.TaskId).Count);
        var desk = await browser.NewPageAsync();
        desk.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await desk.GotoAsync(new Uri(floor, $"/lessons/{gym.Lesson.LessonId}/results").ToString());
        await desk.Locator($"#results[data-live=true][data-pupil='{pupil.Id}']").WaitForAsync();
        await desk.Locator($"input[data-cell='{content.Tasks.ToList().IndexOf(task) + 1}.2.Level.0']").FocusAsync();
        await desk.Keyboard.TypeAsync((offered + 1).ToString(CultureInfo.InvariantCulture));
        await desk.Keyboard.PressAsync("Tab");
        await phone.SeeAsync(".safety-news");
        Assert.Contains(pupil.Label, (await phone.TextsAsync(".safety-news"))[0], StringComparison.Ordinal);
        Assert.Contains(removed[0].Levels[0].Name, (await phone.TextsAsync(".safety-news"))[0], StringComparison.Ordinal);
        await phone.TapAsync(".safety-away");
        await phone.GoneAsync(".safety-news");

        async Task WalkAsync(FloorTablet of)
        {
            var chance = new Random(8);
            foreach (var (gone, _) in removed)
            {
                if (await of.StepAsync() != "task") await of.OnAsync(".page-foot .button.quiet");
                await of.AtAsync("task");
                await OnlyOfferedAsync(of);
                await of.OnAsync(".card.task", content.Tasks.Where(t => gym.LevelsOf(pupil.Id, t.TaskId).Count > 0).ToList().IndexOf(gone));
                while (!(await of.StepAsync()).StartsWith("decide", StringComparison.Ordinal))
                {
                    await OnlyOfferedAsync(of);
                    await of.StepOnAsync(chance);
                }
                await of.OnAsync(".page-top .button[aria-pressed=false]", 1);
                await OnlyOfferedAsync(of);
                await of.OnAsync(".page-foot .button.main");
                await of.StepOnAsync(chance);
                if (await of.StepAsync() == "who") await of.TurnToAsync(pupil.Id);
            }
        }

        async Task OnlyOfferedAsync(FloorTablet of)
        {
            var page = await of.AskAsync<string>("document.documentElement.outerHTML");
            foreach (var level in names) Assert.DoesNotContain(level, page, StringComparison.Ordinal);
        }
    }

    // The first demand that takes a level from the first pupil that nothing else on the sheet is called like, and not all of a task's.
    private static async Task RestrictAsync(SqliteStore store, LessonRecord record)
    {
        var sheet = (await store.ListSheetsAsync(record.School.Id)).Single(s => s.Id == record.Lesson.SheetId);
        var frozen = await store.FreezeSheetAsync(record.School.Id, sheet.Id);
        var demand = Enum.GetValues<BodyDemand>().First(d => frozen.Content.Tasks.Any(t =>
        {
            var before = Offer.LevelsFor(t.Levels, record.School.Policy, [], record.Lesson.Date);
            var after = Offer.LevelsFor(t.Levels, record.School.Policy, [Of(record, d)], record.Lesson.Date);
            return after.Count > 0 && before.Except(after).Any(gone => frozen.Content.Tasks.SelectMany(other => other.Levels).Count(l => l.Name == gone.Name) == 1);
        }));
        foreach (var old in record.Restrictions.Where(r => r.PupilId == record.Pupils[0].Id)) await store.RemoveRestrictionAsync(record.School.Id, old.Id);
        await store.SaveRestrictionAsync(Of(record, demand));
    }

    private static Restriction Of(LessonRecord record, BodyDemand demand) =>
        new() { SchoolId = record.School.Id, Id = EntryId.New(TimeProvider.System), PupilId = record.Pupils[0].Id, Without = demand };
}
