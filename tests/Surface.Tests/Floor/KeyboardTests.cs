using System.Globalization;
using Microsoft.Playwright;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Tasks;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>A whole set without a finger: whoever has keys, a switch or a foot pedal takes part.</summary>
public sealed class KeyboardTests(Browser browser, DemoFolder demo)
{
    private const int MostTabs = 60;

    [Fact]
    public async Task Set_ByKeysAlone_IsKeptAndUndone()
    {
        await using var gym = await Gym.OpenAsync(demo);
        var page = new FloorPage(await FloorPage.ReadyAsync(await browser.NewPageAsync()));
        var keys = page.Page.Keyboard;
        var pupil = gym.Record.Pupils[1].Id;
        var content = gym.Record.Sheet!.Content;
        var timed = content.Tasks.ToList().FindIndex(t => gym.LevelsOf(pupil, t.TaskId) is { Count: > 1 } levels && t.Levels.Single(l => l.Id == levels[1]).Dose.Kind == DoseKind.HoldS);
        var (task, expected) = (content.Tasks[timed], new List<Act>());

        await page.GoAsync(gym.Served.Address, "/floor/");
        await TabToAsync("#code");
        await keys.TypeAsync(gym.Lesson.Code.ToLowerInvariant());
        await OnAsync("Enter");
        await TabToAsync(".card.kind");
        await OnAsync("Enter");
        await TabToAsync(".card.name", 1);
        await keys.PressAsync("Space");
        await TabToAsync(".page-foot .button.main");
        await OnAsync("Enter");
        await page.KnowItselfAsync();
        await TabToAsync(".card.task", timed);
        await OnAsync("Enter");

        // The second level: into the group, then by arrow.
        await TabToAsync(".choice input");
        await keys.PressAsync("Space");
        await keys.PressAsync("ArrowRight");
        await page.SeeAsync(".choice li:nth-child(2) .card[data-chosen]");
        await TabToAsync(".page-foot .button.main");
        await OnAsync("Enter");
        Expect(new Choice(gym.LevelsOf(pupil, task.TaskId)[1]));
        if (await page.CountAsync(".stepper") > 0)
        {
            await TabToAsync(".choice input");
            await keys.PressAsync("Space");
            await page.SeeAsync(".choice li:nth-child(1) .card[data-chosen]");
            await TabToAsync(".page-foot .button.main");
            await OnAsync("Enter");
            Expect(new Prediction(HoldS: 1));
        }
        else
        {
            await TabToAsync(".choice.counts .card", 2);
            await OnAsync("Enter");
            Expect(new Prediction(SuccessCount: 2));
        }

        // Two holds, started by one key and stopped by another; then one that nobody times.
        foreach (var (trial, start, stop) in ((int, string, string)[])[(1, "Space", "Enter"), (2, "s", "ArrowDown")])
        {
            Assert.Equal("holding", await OnAsync(start));
            await OnAsync(stop);
            var heldS = double.Parse((await page.TextsAsync(".held-for"))[0].Split(' ', '\n')[0], CultureInfo.InvariantCulture);
            Assert.InRange(heldS, 0.3, 600);
            await TabToAsync(".choice input:checked");
            await keys.PressAsync("Space");
            await TabToAsync(".page-foot .button.main");
            var isSuccess = await page.CountAsync(".choice li:first-child .card[data-chosen]") == 1;
            await OnAsync("Enter");
            Expect(new Trial(isSuccess, heldS), trial);
        }
        await TabToAsync(".page-foot .button.quiet:not([aria-pressed])");
        await keys.PressAsync("Enter");
        await page.SeeAsync(".choice.wide .card");
        await TabToAsync(".choice.wide .card", 1);
        await OnAsync("Enter");
        Expect(new Trial(false), 3);
        if (content.TrialCount > 3)
        {
            await TabToAsync(".page-foot .button", 1);
            await OnAsync("Enter");
        }
        await TabToAsync(".cues > :nth-child(1) .answer");
        await keys.PressAsync("Space");
        await page.SeeAsync(".cues > :nth-child(1) .answer[aria-pressed=true]");
        await TabToAsync(".page-foot .button");
        await OnAsync("Enter");
        Expect(new CueTick(1, true));
        var options = await page.AskAsync<string[]>("[...document.querySelectorAll('.choice.wide .card')].map(c => c.dataset.next)");
        var option = Math.Max(0, Array.IndexOf(options, "harder"));
        await TabToAsync(".choice.wide .card", option);
        await OnAsync("Enter");
        var reason = (await page.TextsAsync(".reasons .card"))[1];
        await TabToAsync(".reasons .card", 1);
        await OnAsync("Enter");
        Expect(new Decision(Enum.Parse<NextLevel>(options[option], ignoreCase: true), reason));
        await TabToAsync(".page-top > .button:last-child");
        Assert.StartsWith("decide-", await OnAsync("Enter"), StringComparison.Ordinal);
        Expect(new Withdrawal());

        await page.SentAsync();
        var entries = (await gym.EntriesAsync()).Where(e => e.DeviceId == page.DeviceId).OrderBy(e => e.DeviceSequence).Select(Act.Of).ToList();
        Assert.Equal(expected, entries);

        void Expect(EntryFact fact, int? trial = null) => expected.Add(new Act(pupil, task.TaskId, 1, trial, fact));

        // Presses until the page has moved on: a key that follows another too soon is passed over.
        async Task<string> OnAsync(string key)
        {
            var from = await page.StepAsync();
            do await keys.PressAsync(key);
            while (!await page.AskAsync<bool>("f => walk.soon(f)", from));
            return await page.StepAsync();
        }

        // With the Tab key alone, and to see where one is.
        async Task TabToAsync(string selector, int nth = 0)
        {
            for (var tabs = 0; tabs < MostTabs; tabs++)
            {
                if (await page.AskAsync<bool>("([s, n]) => { const e = document.querySelectorAll(s)[n]; return !!e && document.activeElement === e && e.matches(':focus-visible'); }", new object[] { selector, nth })) return;
                await keys.PressAsync("Tab");
            }
            Assert.Fail($"The Tab key does not reach {selector} {nth} on {await page.StepAsync()}.");
        }
    }
}
