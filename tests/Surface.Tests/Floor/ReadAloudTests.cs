using Microsoft.Playwright;
using Slantwise.Records.Floor;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>Cues that are read to whoever would rather hear them.</summary>
public sealed class ReadAloudTests(Browser browser, DemoFolder demo)
{
    // A browser without a window has no voice: this one writes down what it is to say.
    private const string Voice = """
        window.said = [];
        const voice = { lang: 'en-GB', name: 'written down' };
        Object.defineProperty(window, 'speechSynthesis', { value: { getVoices: () => [voice], addEventListener: () => {}, cancel: () => {}, speak: u => window.said.push(u.text) } });
        window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
        """;

    [Fact]
    public async Task Look_WithReadAloudSwitchedOn_SaysTheCuesAsTheyCome()
    {
        await using var gym = await Gym.OpenAsync(demo);
        var page = await browser.NewPageAsync(new() { Locale = "en-GB" });
        await page.AddInitScriptAsync(Voice);
        var (tablet, chance) = (new FloorTablet(await FloorPage.ReadyAsync(page), gym, FloorDeviceKind.Pupil, new()), new Random(9));
        await tablet.JoinAsync(gym.Served.Address, [gym.Record.Pupils[2].Id]);
        var task = gym.Record.Sheet!.Content.Tasks[0];
        await tablet.OnAsync(".card.task", 0);
        await ToLookAsync();
        Assert.Empty(await SaidAsync());

        await tablet.ForAsync(".settings-key", ".dialog .settings");
        await page.GetByText("Read aloud").ClickAsync();
        await page.WaitForFunctionAsync("document.documentElement.dataset.read === 'on'");
        await page.WaitForFunctionAsync("n => window.said.length === n", task.Cues.Count);
        Assert.Equal(task.Cues, await SaidAsync());

        Task<string[]> SaidAsync() => page.EvaluateAsync<string[]>("window.said");

        async Task ToLookAsync()
        {
            while (!(await tablet.StepAsync()).StartsWith("look", StringComparison.Ordinal)) await tablet.StepOnAsync(chance);
        }
    }
}
