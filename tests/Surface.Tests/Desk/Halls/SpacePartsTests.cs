using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Slantwise.Desk.Pages.Halls;
using Slantwise.Records.Halls;
using Slantwise.Records.Halls.Drawing;
using Slantwise.Records.Lessons;

namespace Slantwise.Surface.Tests.Desk.Halls;

public sealed class SpacePartsTests
{
    private static readonly SchoolHall Hall = new()
    {
        SchoolId = Guid.Empty, Id = Guid.Empty, Name = "Hall", WidthM = 20, DepthM = 10, Things = [new("Pillar", 9, 4.5, 1, 1, true)],
    };

    private static readonly HallLayout Layout = new()
    {
        MatLengthM = 2, MatWidthM = 1, ClearM = 1, WallClearM = 1, TeacherXM = 1, TeacherYM = 5,
        Mats = [new(5, 8, false, 0, 1), new(15, 5, false, 1.2, 2), new(7.5, 8, true, 0, 2)], Stations = [new("Frog", null), new("Rope", null)], StationMin = 6,
    };

    [Theory]
    [InlineData("en", "Mat 2, 15 m from the left wall, 5 m from the front wall. Station B. You do not see it.", "Too near to something.")]
    [InlineData("es", "Colchoneta 2, a 15 m de la pared izquierda y a 5 m de la delantera. Estación B. No la ve.", "Demasiado cerca de algo.")]
    public async Task Stage_MatsAndTeacher_AreNamedAndCanBeHeld(string language, string hidden, string near)
    {
        var html = await RenderAsync<SpaceStage>(language, (session, reading) => new()
        {
            ["Session"] = session, ["Reading"] = reading, ["Drawing"] = HallDrawing.Of(Hall, Layout, reading, HallBox.Screen, CultureInfo.GetCultureInfo(language)),
        });
        Assert.Equal(4, html.Split("role=\"button\"").Length - 1);
        Assert.Equal(4, html.Split("tabindex=\"0\" role=\"button\"").Length - 1);
        Assert.Contains(hidden, html);
        // By hand: mat 1 ends at 6 m, the turned mat 3 begins at 7 m: the metre is kept.
        Assert.DoesNotContain(near, html);
        Assert.Contains("data-x=\"15\" data-y=\"5\"", html);
    }

    [Fact]
    public async Task Stage_ClashingMats_SayItInTheirNames()
    {
        var html = await RenderAsync<SpaceStage>("en", (_, _) =>
        {
            var layout = Layout with { Mats = [Layout.Mats[0], Layout.Mats[1], Layout.Mats[2] with { XM = 7.2 }] };
            var reading = HallReading.Of(Hall, layout, 20, CultureInfo.CurrentUICulture);
            return new() { ["Session"] = new SpaceSession(Hall, layout), ["Reading"] = reading, ["Drawing"] = HallDrawing.Of(Hall, layout, reading, HallBox.Screen, CultureInfo.CurrentUICulture) };
        });
        Assert.Equal(2, html.Split("Too near to something.").Length - 1);
    }

    [Fact]
    public async Task Mats_AsATable_HaveAFieldForEveryNumberWithItsName()
    {
        var html = await RenderAsync<SpaceMats>("en", (session, reading) => new() { ["Session"] = session, ["Reading"] = reading });
        foreach (var name in new[] { "Mat 2, from the left wall in metres", "Mat 2, from the front wall in metres", "Mat 2, falling circle in metres", "Mat 3 is turned", "Station of mat 1" })
            Assert.Contains($"aria-label=\"{name}\"", html);
        Assert.Contains("value=\"1.2\"", html);
        Assert.Contains("not seen", html);
    }

    [Theory]
    [InlineData(null, "As many groups as stations", 2)]
    [InlineData(5, "The 5 groups made for this lesson", 5)]
    public async Task Stations_WithOrWithoutGroups_ShowWhoIsWhereWhen(int? groups, string caption, int columns)
    {
        var html = await RenderAsync<SpaceStations>("en", (session, _) => new()
        {
            ["Session"] = session, ["GroupCount"] = groups, ["Phases"] = new LessonPhase[] { new(PhaseKind.Instruction, 8, ""), new(PhaseKind.Activity, 20, "") },
        });
        Assert.Contains(caption, html);
        Assert.Equal(columns, html.Split("\">Group ").Length - 1);
        Assert.Contains("min 8 to 14", html);
        Assert.Contains("min 14 to 20", html);
        Assert.Contains("A · Frog", html);
        Assert.Equal(groups is not null, html.Contains("data-warning=\"Shared\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Notes_AboutAMat_LeadToIt()
    {
        var html = await RenderAsync<SpaceNotes>("en", (_, _) => new()
        {
            ["Notes"] = Enumerable.Range(0, 10).Select(i => new HallNote($"sentence {i}", i)).Append(new("about the teacher", null)).ToList(),
        });
        Assert.Equal(10, html.Split("data-show=\"hall-mat-").Length - 1);
        Assert.Contains("3 more", html);
        Assert.Contains("about the teacher", html);
    }

    private static async Task<string> RenderAsync<TPart>(string language, Func<SpaceSession, HallReading, Dictionary<string, object?>> parameters) where TPart : IComponent
    {
        await using var services = new ServiceCollection().AddLogging().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language == "en" ? "en-GB" : "es-ES");
            var given = parameters(new(Hall, Layout), HallReading.Of(Hall, Layout, 20, CultureInfo.CurrentUICulture));
            return WebUtility.HtmlDecode((await renderer.RenderComponentAsync<TPart>(ParameterView.FromDictionary(given))).ToHtmlString());
        });
    }
}
