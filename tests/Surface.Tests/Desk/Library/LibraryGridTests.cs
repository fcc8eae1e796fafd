using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Slantwise.Desk.Pages.Library;
using Slantwise.Records.Schools;

namespace Slantwise.Surface.Tests.Desk.Library;

public sealed class LibraryGridTests
{
    private static readonly LibraryEntry OneFoot = LibraryShelf.Find("one-foot-balance", CultureInfo.GetCultureInfo("en"))!;

    [Fact]
    public async Task Grid_TaskOfTheLibrary_HasNothingToPointOutAndMarksWhatMoves()
    {
        var html = await RenderAsync(OneFoot, new SafetyPolicy());
        Assert.Contains("No two levels are alike", html, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"findings\"", html, StringComparison.Ordinal);
        // By hand, from the file: the base changes at levels 2, 3 and 5, the hold at 4 and 5.
        Assert.Equal(5, html.Split("<td class=\"moved\">").Length - 1);
    }

    [Fact]
    public async Task Grid_TwoLevelsAlike_SaysWhich()
    {
        var levels = OneFoot.Design.Levels.ToList();
        levels[1] = levels[0] with { Id = levels[1].Id };
        var html = await RenderAsync(OneFoot with { Design = OneFoot.Design with { Levels = levels } }, new SafetyPolicy());
        Assert.Contains("class=\"findings\"", html, StringComparison.Ordinal);
        Assert.Contains("levels[1]", html, StringComparison.Ordinal);
        Assert.DoesNotContain("No two levels are alike", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "The first one left is level 2")]
    [InlineData(5, "rules out every level")]
    public async Task Grid_EasiestThatThePolicyRemoves_AsksForAWayIn(int rollingCount, string said)
    {
        var levels = OneFoot.Design.Levels.Select((l, i) => i < rollingCount ? l with { Demands = [BodyDemand.Roll] } : l).ToList();
        var html = await RenderAsync(OneFoot with { Design = OneFoot.Design with { Levels = levels } }, new SafetyPolicy { Rolls = PolicyChoice.NotAllowed });
        Assert.Contains(said, html, StringComparison.Ordinal);
    }

    private static async Task<string> RenderAsync(LibraryEntry entry, SafetyPolicy policy)
    {
        await using var services = new ServiceCollection().AddLogging().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en-GB");
            var parameters = ParameterView.FromDictionary(new Dictionary<string, object?> { ["Entry"] = entry, ["Policy"] = policy });
            return WebUtility.HtmlDecode((await renderer.RenderComponentAsync<LibraryGrid>(parameters)).ToHtmlString());
        });
    }
}
