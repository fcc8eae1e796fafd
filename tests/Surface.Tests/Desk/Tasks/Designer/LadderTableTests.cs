using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Slantwise.Desk.Pages.Library;
using Slantwise.Desk.Pages.Tasks.Designer;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Ladders;

namespace Slantwise.Surface.Tests.Desk.Tasks.Designer;

public sealed class LadderTableTests
{
    private static readonly TaskDesign OneFoot = LibraryShelf.Find("one-foot-balance", CultureInfo.GetCultureInfo("en"))!.Design;

    [Fact]
    public async Task Table_TaskOfTheLibrary_SaysWhatMovedWhatIsAskedAndWhatTheMechanicsSay()
    {
        var html = await RenderAsync<LadderTable>(new(OneFoot, "en", Guid.CreateVersion7));
        Assert.Equal(5, Count(html, "role=\"row\" data-level"));
        Assert.Contains("Hold, in seconds: 10 instead of 5", html, StringComparison.Ordinal);
        Assert.Contains("Held, with", html, StringComparison.Ordinal);
        Assert.Contains("As a level of this task that is done in the same way.", html, StringComparison.Ordinal);
        Assert.Equal(4, Count(html, "<span class=\"tag on\">Taken</span>"));
        Assert.Contains("pick a class below", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Not known", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Table_LevelOfWhichNothingIsKnown_AsksAndCannotBeTaken()
    {
        var bare = OneFoot with { Levels = [], Words = OneFoot.Words.ToDictionary(w => w.Key, w => w.Value with { Levels = [] }) };
        var state = new DesignerState(bare, "en", Guid.CreateVersion7);
        var html = await RenderAsync<LadderTable>(state);
        Assert.Equal(state.Rows.Count, Count(html, "data-open=\"1\""));
        Assert.Equal(state.Rows.Count, Count(html, "<button type=\"button\" aria-disabled=\"true\""));
        Assert.Contains("nothing of these", html, StringComparison.Ordinal);
        state.Answer(state.Rows[0], a => a with { Demands = [BodyDemand.HeadWeight] });
        html = await RenderAsync<LadderTable>(state);
        Assert.Equal(state.Rows.Count - 1, Count(html, "data-open=\"1\""));
        Assert.Contains("As you said.", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Kept_LevelAddedByHand_IsSaidToBeOffTheGrid()
    {
        var byHand = new DesignedLevel { Id = Guid.CreateVersion7(), Dose = new Dose(DoseKind.HoldS, 5) };
        var design = OneFoot with
        {
            Levels = [.. OneFoot.Levels, byHand], Words = OneFoot.Words.ToDictionary(w => w.Key, w => w.Value with { Levels = [.. w.Value.Levels, "On a cushion"] }),
        };
        var html = await RenderAsync<KeptLevels>(new(design, "en", Guid.CreateVersion7));
        Assert.Equal(1, Count(html, "data-on-grid=\"0\""));
        Assert.Equal(5, Count(html, "data-on-grid=\"1\""));
        Assert.Equal(1, Count(html, ">not on the grid</li>"));
        Assert.Equal(1, Count(html, "no place yet"));
    }

    [Fact]
    public async Task Grid_ClassicalPlan_LetsOnlyTheKeyFactorMove()
    {
        var state = new DesignerState(OneFoot, "en", Guid.CreateVersion7);
        state.Ask(state.Plan! with { Kind = LadderKind.Classical });
        var html = await RenderAsync<GridFields>(state, ("Factor", state.Design.Factors[1]));
        Assert.Contains("<option value=\"Helps\" disabled", html, StringComparison.Ordinal);
        Assert.Contains("Stays at", html, StringComparison.Ordinal);
        Assert.DoesNotContain("holdS-last", html, StringComparison.Ordinal);
        html = await RenderAsync<GridFields>(state, ("Factor", state.Design.Factors[0]));
        Assert.Contains("steadying-last", html, StringComparison.Ordinal);
        Assert.Contains("toes on the floor\n", html, StringComparison.Ordinal);
    }

    private static int Count(string html, string part) => html.Split(part).Length - 1;

    private static async Task<string> RenderAsync<T>(DesignerState state, params (string, object)[] more) where T : IComponent
    {
        await using var services = new ServiceCollection().AddLogging().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en-GB");
            var given = new Dictionary<string, object?> { ["State"] = state };
            if (typeof(T) != typeof(GridFields)) given["Policy"] = new SafetyPolicy();
            foreach (var (name, value) in more) given[name] = value;
            return WebUtility.HtmlDecode((await renderer.RenderComponentAsync<T>(ParameterView.FromDictionary(given))).ToHtmlString());
        });
    }
}
