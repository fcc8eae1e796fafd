using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>A tablet in pupils' hands. It says to the model what its screens have acknowledged: a step counts once the screen has moved on, and must be on the disk by then.</summary>
internal sealed partial class FloorTablet(IPage page, Gym gym, FloorDeviceKind kind, Acknowledged model) : FloorPage(page)
{
    // A task that is done has a tick, and leads to the own page.
    private const string OpenTasks = ".card.task:not(:has(.words .mark))";

    private List<Act> _pending = [];

    /// <summary>Whom it serves; for a station the whole class.</summary>
    public IReadOnlyList<Guid> Pupils { get; private set; } = [];

    /// <summary>Whose turn it is; none where nobody has been picked.</summary>
    public Guid? PupilId { get; private set; }

    /// <summary>Whether others write about its pupils too: then a step may turn out to hold already.</summary>
    public bool IsShared { get; init; }

    /// <summary>Joins by the code on the wall, typed or in the link.</summary>
    public async Task JoinAsync(Uri floor, IReadOnlyList<Guid> pupils, bool isByLink = false)
    {
        await GoAsync(floor, isByLink ? $"/floor/#join={gym.Lesson.Code}" : "/floor/");
        if (!isByLink)
        {
            await Page.Locator("#code").FillAsync(gym.Lesson.Code);
            await OnAsync(".page-main .button.main");
        }
        await AtAsync("kind");
        var after = await OnAsync(".card.kind", kind switch { FloorDeviceKind.Pupil => 0, FloorDeviceKind.Pair => 1, _ => 2 });
        if (after == "pick")
        {
            foreach (var pupil in pupils)
                await AskAsync<object>("n => walk.card('.card.name', n)", gym.Record.Pupils.Select(p => p.Id).ToList().IndexOf(pupil));
            await OnAsync(".page-foot .button.main");
        }
        Pupils = pupils;
        PupilId = kind == FloorDeviceKind.Pupil ? pupils[0] : null;
        await KnowItselfAsync();
    }

    /// <summary>The tablet goes to a pupil.</summary>
    public async Task TurnToAsync(Guid pupilId)
    {
        if (kind == FloorDeviceKind.Pupil) return;
        if (await StepAsync() != "who") await OnAsync(".page-top .who .button");
        var names = await TextsAsync(".choice .card");
        await OnAsync(".choice .card", Array.IndexOf(names, gym.Record.Pupils.Single(p => p.Id == pupilId).Label));
        PupilId = pupilId;
    }

    /// <summary>Does what the screen asks for: one step, with chance deciding what the pupil says.</summary>
    /// <returns>The screen afterwards; "mine" at the end of the sheet.</returns>
    public async Task<string> StepOnAsync(Random chance)
    {
        var step = await StepAsync();
        switch (Step().Match(step))
        {
            case { Success: true } m when m.Groups["kind"].Value == "level": return await ChooseAsync(m, chance);
            case { Success: true } m when m.Groups["kind"].Value == "predict": return await PredictAsync(m, chance);
            case { Success: true } m when m.Groups["kind"].Value == "try": return await TryAsync(m, chance);
            case { Success: true } m when m.Groups["kind"].Value == "look": return await LookAsync(m, chance);
            case { Success: true } m when m.Groups["kind"].Value == "decide": return await DecideAsync(m, chance);
        }
        switch (step)
        {
            case "who":
                await TurnToAsync(Pupils[chance.Next(Pupils.Count)]);
                return await StepAsync();
            case "task":
                return await OnAsync(OpenTasks, chance.Next(await CountAsync(OpenTasks)));
            default:
                throw new InvalidOperationException($"No step from “{step}”.");
        }
    }

    /// <summary>Takes the last step back, where there is one.</summary>
    public async Task UndoAsync()
    {
        if (PupilId is not { } pupil || await CountAsync(".page-top > .button:last-child .mark") == 0) return;
        var before = model.CountOf(DeviceId);
        // Which entries the step had, its screen does not say: those of the disk are told to the model as what a withdrawal is about.
        await AskAsync<object>("([d, k]) => walk.undo(d, k)", new object[] { DeviceId, before });
        var made = await AfterAsync(before);
        Assert.All(made, e => Assert.Equal((pupil, (EntryFact)new Withdrawal()), (e.PupilId!.Value, e.Fact)));
        model.Add(DeviceId, made.Select(Act.Of));
    }

    /// <summary>Tells the model what was done on the screen by other hands than these.</summary>
    public async Task CatchUpAsync() => model.Add(DeviceId, (await AfterAsync(model.CountOf(DeviceId))).Select(Act.Of));

    /// <summary>Finds out after a reload or a death what became of the step that was under way: it is on the disk or not, and nothing else is.</summary>
    public async Task SettleAsync()
    {
        if (kind != FloorDeviceKind.Pupil) PupilId = null;
        var known = model.CountOf(DeviceId);
        var made = (await AfterAsync(known)).Select(Act.Of).ToList();
        Assert.True(made.Count <= _pending.Count, $"{DeviceId} has {string.Join(", ", made)} after {known}, and nobody did more than {string.Join(", ", _pending)}.");
        if (IsShared) Assert.Subset(Untold(_pending), Untold(made));
        else Assert.Equal(_pending.Take(made.Count), made);
        Assert.Equal(known + made.Count, await SequenceAsync());
        model.Add(DeviceId, made);
        _pending = [];
    }

    /// <summary>Opens the lesson in another page, after the one before was closed or died.</summary>
    public async Task ReopenAsync(IPage page, Uri floor)
    {
        Page = page;
        await GoAsync(floor, "/floor/");
    }

    /// <summary>The page goes away while a step is under way, and comes back.</summary>
    public async Task AwayAsync(Task living, Func<Task> leave)
    {
        IsGoing = true;
        var left = leave();
        try
        {
            await living;
        }
        catch (PlaywrightException)
        {
            // What became of the step is read from the disk.
        }
        await left;
        IsGoing = false;
        await SettleAsync();
    }

    private async Task<string> ChooseAsync(Match step, Random chance)
    {
        var levels = gym.LevelsOf(PupilId!.Value, TaskOf(step));
        var cards = await CountAsync(".choice .card");
        Assert.Equal(levels.Count, cards);
        var nth = chance.Next(cards);
        await AskAsync<object>("n => walk.card('.choice .card', n)", nth);
        return await KeepAsync(".page-foot .button.main", 0, About(step, new Choice(levels[nth])));
    }

    private async Task<string> PredictAsync(Match step, Random chance)
    {
        if (chance.Next(6) == 0) return await OnAsync(".page-foot .button.quiet");
        if (await CountAsync(".stepper") == 0)
        {
            var count = chance.Next(await CountAsync(".choice.counts .card"));
            return await KeepAsync(".choice.counts .card", count, About(step, new Prediction(SuccessCount: count)));
        }
        var nth = chance.Next(await CountAsync(".choice .card"));
        await AskAsync<object>("n => walk.card('.choice .card', n)", nth);
        var seconds = double.Parse((await TextsAsync(".choice .rung"))[nth], CultureInfo.InvariantCulture);
        return await KeepAsync(".page-foot .button.main", 0, About(step, new Prediction(HoldS: seconds)));
    }

    private async Task<string> TryAsync(Match step, Random chance)
    {
        var trial = int.Parse(step.Groups["trial"].Value, CultureInfo.InvariantCulture);
        if (step.Groups["held"].Success) return await KeepHoldAsync(step, trial);
        if (await CountAsync(".hold") > 0)
        {
            if (chance.Next(3) == 0) return await HoldAsync(step, trial);
            await ForAsync(".page-foot .button.quiet:not([aria-pressed])", ".choice.wide .card");
        }
        var isSuccess = chance.Next(2) == 0;
        return await KeepAsync(".choice.wide .card", isSuccess ? 0 : 1, About(step, new Trial(isSuccess)) with { TrialNumber = trial });
    }

    private async Task<string> HoldAsync(Match step, int trial)
    {
        if (await OnAsync(".hold .start") == "holding") await OnAsync(".hold-face");
        return await KeepHoldAsync(step, trial);
    }

    private async Task<string> KeepHoldAsync(Match step, int trial)
    {
        var heldS = double.Parse((await TextsAsync(".held-for"))[0].Split(' ', '\n')[0].Replace(',', '.'), CultureInfo.InvariantCulture);
        var isSuccess = await CountAsync(".choice li:first-child .card[data-chosen]") == 1;
        return await KeepAsync(".page-foot .button.main", 0, About(step, new Trial(isSuccess, heldS)) with { TrialNumber = trial });
    }

    private async Task<string> LookAsync(Match step, Random chance)
    {
        var standing = await AskAsync<int[]>("walk.standing()");
        var acts = new List<Act>();
        for (var cue = 1; cue <= standing.Length; cue++)
        {
            if (chance.Next(8) == 0) continue;
            var isTicked = chance.Next(2) == 0;
            if (standing[cue - 1] == (isTicked ? 0 : 1)) continue;
            acts.Add(About(step, new CueTick(cue, isTicked)));
            _pending = acts;
            await AskAsync<object>("([c, t]) => walk.answer(c, t)", new object[] { cue, isTicked });
        }
        return await KeepAsync(".page-foot .button", 0, [.. acts]);
    }

    private async Task<string> DecideAsync(Match step, Random chance)
    {
        var options = await AskAsync<string[]>("[...document.querySelectorAll('.choice.wide .card')].map(c => c.dataset.next)");
        var nth = chance.Next(options.Length);
        var next = Enum.Parse<NextLevel>(options[nth], ignoreCase: true);
        await OnAsync(".choice.wide .card", nth);
        var reasons = await TextsAsync(".reasons .card");
        var reason = chance.Next(reasons.Length + 2);
        if (reason < reasons.Length) return await KeepAsync(".reasons .card", reason, About(step, new Decision(next, reasons[reason])));
        if (reason == reasons.Length) return await KeepAsync(".page-foot .button:not(.quiet)", 0, About(step, new Decision(next)));
        var words = $"So ist es {chance.Next(1000)}: ¡ñ! „x“";
        await FillAsync(".own textarea", words);
        return await KeepAsync(".own .button", 0, About(step, new Decision(next, words)));
    }

    private Act About(Match step, EntryFact fact) =>
        new(PupilId, TaskOf(step), int.Parse(step.Groups["set"].Value, CultureInfo.InvariantCulture), null, fact);

    // The step that makes facts hold: when the screen has moved on they are on the disk, and only then does the model know them.
    private async Task<string> KeepAsync(string selector, int nth, params IReadOnlyList<Act> acts)
    {
        _pending = [.. acts];
        var after = await OnAsync(selector, nth);
        var known = model.CountOf(DeviceId);
        var made = (await AfterAsync(known)).Select(Act.Of).ToList();
        if (IsShared) Assert.Subset(Untold(acts), Untold(made));
        else Assert.Equal(acts, made);
        model.Add(DeviceId, made);
        _pending = [];
        return after;
    }

    // Another tablet's try may come in between the look at the screen and the tap; this one is then the next.
    private static HashSet<Act> Untold(IEnumerable<Act> acts) => [.. acts.Select(a => a with { TrialNumber = null })];

    private static Guid TaskOf(Match step) => Guid.Parse(step.Groups["task"].Value);

    [GeneratedRegex(@"^(?<kind>level|predict|try|look|decide|why)-(?<task>[0-9a-f-]{36})-(?<set>\d+)(-(?<trial>\d+))?(?<held>-held)?$")]
    private static partial Regex Step();
}
