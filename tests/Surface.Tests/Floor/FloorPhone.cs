using Microsoft.Playwright;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>The teacher's phone. What it writes is told to the model once its screen has said so.</summary>
internal sealed class FloorPhone(IPage page, Gym gym, Acknowledged model) : FloorPage(page)
{
    /// <summary>Joins by the link of the lesson's page.</summary>
    public async Task JoinAsync(Uri floor)
    {
        await GoAsync(floor, $"/floor/teacher#ticket={gym.Ticket(FloorDeviceKind.Teacher)}");
        await SeeAsync(".tiles-page");
        await KnowItselfAsync();
    }

    /// <summary>Two taps on a pupil's sheet.</summary>
    public async Task VisitAsync(Guid pupilId, VisitTopic topic, VisitForm form)
    {
        await OpenAsync(pupilId);
        await ForAsync($".key[data-topic='{Name(topic)}']", ".key[data-form]");
        await ForAsync($".key[data-form='{Name(form)}']", ".pad-done[data-saved]");
        await SaidAsync(pupilId, new Visit(topic, form));
        await ForAsync(".pad-done .button.main", ".tiles-page");
    }

    /// <summary>A note by keyboard.</summary>
    public async Task NoteAsync(Guid pupilId, string text)
    {
        await OpenAsync(pupilId);
        await ForAsync(".sheet-body > .row .button", ".note-field", nth: 1);
        await FillAsync(".note-field textarea", text);
        await AskAsync<object>("walk.away('.note-field .button.main', '.note-field')");
        await SaidAsync(pupilId, new Note(text));
        await BackAsync();
    }

    /// <summary>A look at the cues before the pupil's own ticks are shown: met, not met, and so on in turn.</summary>
    public async Task CheckAsync(Guid pupilId)
    {
        await OpenAsync(pupilId);
        await ForAsync(".sheet-body > .row .button", ".sight");
        var cues = await CountAsync(".sight");
        for (var cue = 0; cue < cues; cue++) await AskAsync<object>("n => walk.card('.sight-key', n)", (cue * 3) + (cue % 2));
        await ForAsync(".sheet-foot .button.main", ".both[data-checked]");
        await SaidAsync(pupilId, [.. Enumerable.Range(0, cues).Select(cue => new TeacherCheck(cue + 1, cue % 2 == 0, IsBlind: true))]);
        await BackAsync();
    }

    /// <summary>What most of the class is doing now.</summary>
    public async Task PhaseAsync(PhaseKind phase)
    {
        await ForAsync(".tab-key", ".phases", nth: 1);
        await ForAsync($".phase[data-phase='{Name(phase)}']", $".phase[data-phase='{Name(phase)}'][aria-pressed=true]");
        await SaidAsync(null, new PhaseMark(phase));
    }

    /// <summary>A look around: how many are not with the task.</summary>
    public async Task ScanAsync(int offCount)
    {
        await ForAsync(".tab-key", ".scan-line", nth: 1);
        await ForAsync(".scan-line .button", ".counter");
        for (var off = 1; off <= offCount; off++) await AskAsync<object>("n => walk.says('.counter .button', 1, '.counter-number strong', String(n))", off);
        await ForAsync(".pad .button.main", ".scan-line");
        await SaidAsync(null, new EngagementScan(gym.Record.Pupils.Count - offCount, gym.Record.Pupils.Count));
    }

    /// <summary>Stop on every screen.</summary>
    public Task StopAsync() => ForAsync(".tabs .hold.stop", ".top[data-stopped]");

    /// <summary>And on.</summary>
    public Task GoOnAsync() => ForAsync(".tabs .hold.go", ".tabs .hold.stop");

    /// <summary>The lesson ends on all devices.</summary>
    public async Task EndAsync()
    {
        await ForAsync(".tab-key", ".ending", nth: 3);
        await ForAsync(".ending .button.grave", ".dialog");
        await ForAsync(".dialog .foot .button", ".ending .row", nth: 1);
    }

    /// <summary>A pupil's sheet, from wherever the phone is.</summary>
    public async Task OpenAsync(Guid pupilId)
    {
        if (await CountAsync(".tiles-page") == 0) await ForAsync(".tab-key", ".tiles-page");
        await ForAsync($".tile[data-pupil='{pupilId}']", ".sheet");
    }

    private async Task BackAsync()
    {
        await AskAsync<object>("walk.for('.tab-key', 0, '.tiles-page')");
    }

    private async Task SaidAsync(Guid? pupilId, params IReadOnlyList<EntryFact> facts)
    {
        var known = model.CountOf(DeviceId);
        var made = (await AfterAsync(known)).Select(Act.Of).ToList();
        Assert.Equal(facts.Select(f => (pupilId, f)), made.Select(a => (a.PupilId, a.Fact)));
        model.Add(DeviceId, made);
    }

    private static string Name(Enum value) => char.ToLowerInvariant(value.ToString()[0]) + value.ToString()[1..];
}
