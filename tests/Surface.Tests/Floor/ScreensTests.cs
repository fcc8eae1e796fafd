using Microsoft.Playwright;
using Slantwise.Records.Floor;
using Slantwise.Records.Tasks;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>Every screen of the floor, looked at.</summary>
public sealed class ScreensTests(Browser browser, DemoFolder demo)
{
    [Theory]
    [InlineData("light", 390, 740, "en-GB", false, false)]
    [InlineData("dark", 390, 740, "en-GB", true, false)]
    [InlineData("narrow", 320, 568, "es-ES", false, true)]
    public async Task Screens_OfPupilTeacherAndBoard_HaveNoBarrierAndNothingCut(string name, int width, int height, string language, bool isDark, bool isLarger)
    {
        var options = new BrowserNewContextOptions
        {
            ViewportSize = new() { Width = width, Height = height }, Locale = language, HasTouch = true,
            ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ReducedMotion = ReducedMotion.Reduce,
        };
        await using var gym = await Gym.OpenAsync(demo);
        var (model, looks, chance, floor) = (new Acknowledged(), new FloorLooks(name), new Random(4), gym.Served.Address);
        var pupil = gym.Record.Pupils[0].Id;

        // A tablet of one's own, from the first page to the own page.
        var own = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync(options)), gym, FloorDeviceKind.Pupil, model);
        await own.GoAsync(floor, "/floor/");
        if (isLarger)
        {
            await own.ForAsync(".settings-key", ".dialog .settings");
            await own.AskAsync<object>("walk.card('.option', 4)");
            await own.AskAsync<object>("walk.away('.dialog .foot .button', '.dialog')");
        }
        await looks.AtAsync(own, "start");
        await own.FillAsync("#code", "BCDFGH");
        await own.OnAsync(".page-main .button.main");
        await looks.AtAsync(own, "kind");
        await own.OnAsync(".card.kind");
        await own.SeeAsync(".banner.problem");
        await looks.AtAsync(own, "start-wrong-code");
        await own.GoAsync(floor, $"/floor/#join={gym.Lesson.Code}");
        await own.ReloadAsync();
        await own.JoinAsync(floor, [pupil]);
        await LooksOfSettingsAsync(own, "settings");
        await own.AtAsync("task");
        await looks.AtAsync(own, "task");
        var timed = gym.Record.Sheet!.Content.Tasks.ToList().FindIndex(t => t.Levels.Any(l => l.Dose.Kind == DoseKind.HoldS));
        await own.OnAsync(".card.task", timed);
        await looks.AtAsync(own, "level");
        await own.AskAsync<object>("walk.card('.choice .card', 0)");
        await looks.AtAsync(own, "level-chosen");
        await own.StepOnAsync(chance);
        await looks.AtAsync(own, "predict");
        await own.StepOnAsync(chance);
        await looks.AtAsync(own, "try");
        await own.OnAsync(".hold .start");
        await looks.AtAsync(own, "holding");
        await own.OnAsync(".hold-face");
        await looks.AtAsync(own, "held");
        await own.StepOnAsync(chance);
        await own.ForAsync(".page-foot .button.quiet:not([aria-pressed])", ".choice.wide .card");
        await looks.AtAsync(own, "try-without-timer");
        while (!(await own.StepAsync()).StartsWith("look", StringComparison.Ordinal)) await own.StepOnAsync(chance);
        await looks.AtAsync(own, "look");
        await own.AskAsync<object>("walk.answer(1, true)");
        await looks.AtAsync(own, "look-answered");
        await own.OnAsync(".page-foot .button");
        await looks.AtAsync(own, "decide");
        await own.OnAsync(".choice.wide .card");
        await looks.AtAsync(own, "why");
        await own.OnAsync(".reasons .card");
        await own.OnAsync(".page-top .button", 1);
        await own.AtAsync("mine");
        await looks.AtAsync(own, "mine");
        await own.CatchUpAsync();

        // A station and a pair: the names.
        var station = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync(options)), gym, FloorDeviceKind.Station, model);
        await station.JoinAsync(floor, [pupil]);
        await looks.AtAsync(station, "who-station");
        var pair = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync(options)), gym, FloorDeviceKind.Pair, model);
        await pair.GoAsync(floor, $"/floor/#join={gym.Lesson.Code}");
        await pair.OnAsync(".card.kind", 1);
        await looks.AtAsync(pair, "pick");
        foreach (var nth in (int[])[1, 2]) await pair.AskAsync<object>("n => walk.card('.card.name', n)", nth);
        await pair.OnAsync(".page-foot .button.main");
        await looks.AtAsync(pair, "who-pair");

        // The teacher's phone.
        var phone = new FloorPhone(await FloorPage.ReadyAsync(await browser.NewPageAsync(options)), gym, model);
        await phone.JoinAsync(floor);
        if (isLarger)
        {
            await phone.ForAsync(".tab-key", ".ending", nth: 3);
            await phone.ForAsync(".tab > .button", ".dialog .settings");
            await phone.AskAsync<object>("walk.card('.option', 4)");
            await phone.AskAsync<object>("walk.away('.dialog .foot .button', '.dialog')");
            await phone.ForAsync(".tab-key", ".tiles-page");
        }
        await looks.AtAsync(phone, "class");
        await phone.ForAsync(".tool", ".finder");
        await looks.AtAsync(phone, "find");
        await phone.ForAsync(".tool", ".tiles.register", nth: 1);
        await looks.AtAsync(phone, "register");
        await phone.AskAsync<object>("walk.away('.tool[aria-pressed=true]', '.tiles.register')");
        await phone.OpenAsync(pupil);
        await phone.SeeAsync(".told");
        await looks.AtAsync(phone, "pupil");
        await phone.ForAsync(".key[data-topic=cue]", ".key[data-form]");
        await looks.AtAsync(phone, "visit-form");
        await phone.ForAsync(".key[data-form=asked]", ".pad-done[data-saved]");
        await looks.AtAsync(phone, "visit-saved");
        await phone.ForAsync(".sheet-body > .row .button", ".note-field", nth: 1);
        await looks.AtAsync(phone, "note");
        await phone.ForAsync(".sheet-body > .row .button", ".sight");
        await looks.AtAsync(phone, "check");
        await phone.AskAsync<object>("walk.card('.sight-key', 1)");
        await phone.ForAsync(".sheet-foot .button.main", ".both[data-checked]");
        await looks.AtAsync(phone, "check-saved");
        await phone.ForAsync(".tab-key", ".phases", nth: 1);
        await phone.ForAsync(".phase", ".phase[aria-pressed=true]");
        await looks.AtAsync(phone, "clock");
        await phone.ForAsync(".scan-line .button", ".counter");
        await looks.AtAsync(phone, "scan");
        await phone.ForAsync(".tab-key", ".devices .device", nth: 2);
        await phone.ForAsync(".device-head", ".device-orders");
        await looks.AtAsync(phone, "devices");
        await phone.ForAsync(".tab-key", ".ending", nth: 3);
        await looks.AtAsync(phone, "lesson");
        await LooksOfCodeAsync();
        await phone.ForAsync(".tab-key", ".ending", nth: 3);
        await phone.ForAsync(".ending .button.grave", ".dialog");
        await looks.AtAsync(phone, "end");
        await phone.AskAsync<object>("walk.away('.dialog .foot .button', '.dialog')");

        // The board, as wide as a projector, and as narrow as everything else.
        var board = new FloorPage(await FloorPage.ReadyAsync(await browser.NewPageAsync(new(options) { ViewportSize = isLarger ? options.ViewportSize : new() { Width = 1280, Height = 720 } })));
        await board.GoAsync(floor, $"/floor/board#ticket={gym.Ticket(FloorDeviceKind.Board)}");
        await board.SeeAsync(".board-task");
        await looks.AtAsync(board, "board");
        await phone.ForAsync(".presets .button", ".counting");
        await board.SeeAsync(".board-count");
        await looks.AtAsync(board, "board-countdown");
        await looks.AtAsync(phone, "lesson-countdown");

        // What lies over everything: stop, pause, the end.
        await phone.StopAsync();
        await own.SeeAsync(".cover.stop");
        await looks.AtAsync(own, "stop");
        await board.SeeAsync(".cover.stop");
        await looks.AtAsync(board, "board-stop");
        await looks.AtAsync(phone, "stopped");
        await phone.GoOnAsync();
        await own.GoneAsync(".cover");
        await phone.ForAsync(".tab-key", ".devices .device", nth: 2);
        var row = Array.FindIndex(await phone.TextsAsync(".device-head"), t => t.Contains(gym.Record.Pupils[0].Label, StringComparison.Ordinal));
        await phone.ForAsync(".device-head", $".device:nth-child({row + 1}) .device-orders", row);
        await phone.ForAsync(".device-orders .button", ".device-orders .button[aria-pressed=true]");
        await own.SeeAsync(".cover.rest");
        await looks.AtAsync(own, "pause");
        await phone.AskAsync<object>("walk.away('.device-orders .button', '.device-orders .button[aria-pressed=true]')");
        await own.GoneAsync(".cover");

        // Without a network, with something to hand over.
        foreach (var page in (FloorPage[])[own, phone]) await page.Page.Context.SetOfflineAsync(true);
        await own.ForAsync(".page-foot .button.main", ".page:not([data-step=mine])");
        await own.StepOnAsync(chance);
        await own.SeeAsync(".status-line [data-state=offline]");
        await looks.AtAsync(own, "offline");
        await phone.SeeAsync(".top-sent[data-offline]");
        await looks.AtAsync(phone, "devices-offline");
        await own.ForAsync(".status-line .settings-key", ".dialog .device-part");
        await own.ForAsync(".device-part .button.quiet", ".device-part .row");
        await looks.AtAsync(own, "leave-waits");
        await own.ForAsync(".device-part .row .button", ".chain[data-total] .chain-code path", 1);
        await looks.AtAsync(own, "chain");
        await own.AskAsync<object>("walk.away('.chain .row .button:last-child', '.chain')");
        await own.AskAsync<object>("walk.away('.dialog > .foot .button', '.dialog')");
        foreach (var page in (FloorPage[])[own, phone]) await page.Page.Context.SetOfflineAsync(false);
        await own.SentAsync();
        await phone.EndAsync();
        await looks.AtAsync(phone, "lesson-ended");
        await own.SeeAsync(".cover.end .button.main");
        await looks.AtAsync(own, "over");
        await board.SeeAsync(".cover.end");
        await looks.AtAsync(board, "board-over");
        looks.AssertFine(50);

        async Task LooksOfSettingsAsync(FloorTablet tablet, string screen)
        {
            await tablet.ForAsync(".settings-key", ".dialog .settings");
            await looks.AtAsync(tablet, screen);
            await tablet.AskAsync<object>("walk.away('.dialog .foot .button', '.dialog')");
        }

        async Task LooksOfCodeAsync()
        {
            await phone.ForAsync(".tab .stack-s > .button", ".code-body");
            await looks.AtAsync(phone, "code-unknown");
            await phone.ForAsync(".code-body .button", ".code-text");
            await phone.SeeAsync(".code-body .qr path");
            await looks.AtAsync(phone, "code");
        }
    }
}
