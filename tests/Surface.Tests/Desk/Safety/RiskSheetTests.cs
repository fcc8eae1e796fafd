using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Slantwise.Desk.Pages.Safety;
using Slantwise.Records.Safety;
using Slantwise.Surface.Tests.Paper;
using Slantwise.Surface.Tests.Paper.RiskPages;

namespace Slantwise.Surface.Tests.Desk.Safety;

public sealed class RiskSheetTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");

    [Fact]
    public async Task Sheet_UsualLesson_SaysWhatThePaperSays()
    {
        var record = RiskPaper.Record();
        var page = RiskPage.Of(record, RiskPaper.Material(record) with { Notes = new RiskNotes { ShowsNames = true } }, English);
        var html = await RenderAsync<RiskSheet>(new() { ["Page"] = page });
        string[] said =
        [
            page.Say("LocalRules"), page.Say("Rule"), .. page.Tasks.SelectMany(t => t.Controls.Concat(t.PolicyLines).Append(t.Caution).Append(t.Because)), .. page.ProposedChecks,
            .. page.RestrictionLines, record.School.EmergencyNotes, "Amara, Chiara", page.Say("SignSignature"),
        ];
        Assert.All(said, s => Assert.Contains(s, html, StringComparison.Ordinal));
        Assert.DoesNotContain("Okafor", html, StringComparison.Ordinal);
        Assert.Equal(2, html.Split(page.Say("LocalRules")).Length);
    }

    [Fact]
    public async Task Fields_TaskWithTheTeachersWords_ShowsProposalAndWordsBesideEachOther()
    {
        var record = RiskPaper.Record();
        var id = record.Sheet!.Content.Tasks[2].TaskId;
        var notes = new RiskNotes { Tasks = [new(id, RiskLevel.Medium, ["Mats in a <row>."])] };
        var material = RiskPaper.Material(record) with { Notes = notes, Incidents = [RiskPaper.Noted(record, id, IncidentKind.Incident, "Two on one mat.", "One mat each.")] };
        var task = RiskPage.Of(record, material, English).Tasks[2];
        var html = await RenderAsync<RiskTaskFields>(new() { ["Task"] = task, ["Draft"] = new RiskDraft(notes, [id]).Tasks[0] });
        Assert.Contains("<strong>High</strong>", html, StringComparison.Ordinal);
        Assert.All(task.ProposedControls, c => Assert.Contains(c, html, StringComparison.Ordinal));
        Assert.Contains("value=\"Mats in a <row>.\"", html, StringComparison.Ordinal);
        Assert.Contains("Back to the proposal", html, StringComparison.Ordinal);
        Assert.Contains("Two on one mat.", html, StringComparison.Ordinal);
        Assert.Contains("Since then: One mat each.", html, StringComparison.Ordinal);
        Assert.Equal(1, html.Split(" checked").Length - 1);
    }

    [Fact]
    public async Task Fields_UntouchedTask_OffersToChangeTheProposal()
    {
        var record = RiskPaper.Record();
        var task = RiskPage.Of(record, RiskPaper.Material(record), English).Tasks[0];
        var html = await RenderAsync<RiskTaskFields>(new() { ["Task"] = task, ["Draft"] = new TaskRiskDraft(task.TaskId) });
        Assert.Contains("Write it your way", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Back to the proposal", html, StringComparison.Ordinal);
    }

    private static async Task<string> RenderAsync<T>(Dictionary<string, object?> parameters)
        where T : IComponent
    {
        await using var services = new ServiceCollection().AddLogging().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = English;
            return WebUtility.HtmlDecode((await renderer.RenderComponentAsync<T>(ParameterView.FromDictionary(parameters))).ToHtmlString());
        });
    }
}
