using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Desk.Pages.Units;
using Slantwise.Records.Evidence.Engagement;
using Slantwise.Records.Evidence.Reviews;
using Slantwise.Records.Tasks;
using Slantwise.Records.Units;
using Slantwise.Records.Units.Revisits;

namespace Slantwise.Surface.Tests.Desk.Units;

public sealed class UnitPartsTests
{
    private static readonly Outcome Still = new(new Guid(1, 0, 0, new byte[8]), "S1", "Holds still", "");
    private static readonly Outcome Soft = new(new Guid(2, 0, 0, new byte[8]), "", "Lands softly", "");

    private static readonly MovementTask Stork = new() { SchoolId = Guid.Empty, Id = new Guid(3, 0, 0, new byte[8]), Name = "Stork", Levels = [] };

    private static readonly TeachingUnit Unit = new()
    {
        SchoolId = Guid.Empty, Id = Guid.Empty, ClassId = Guid.Empty, Name = "Still and soft",
        Content = new() { Outcomes = [Still, Soft], Lessons = [new("First", null, [new(Stork.Id, [Still.Id])], []), new("Second", null, [], [])] },
    };

    [Fact]
    public async Task Coverage_PlannedAndTried_SaysBothInWordsAndNamesTheGaps()
    {
        var coverage = new UnitCoverage
        {
            Outcomes = [new(Still, [new(1, 12, 60), default], 12), new(Soft, [default, default], 0)],
            LessonsWithoutOutcome = [2],
        };
        var html = await RenderAsync<CoverageTable>(("Coverage", coverage), ("Unit", Unit));
        Assert.Contains("1 outcome is in no lesson. Lands softly", html, StringComparison.Ordinal);
        Assert.Contains("1 lesson has no task with an outcome: 2.", html, StringComparison.Ordinal);
        Assert.Contains("12 pupils, 60 tries", html, StringComparison.Ordinal);
        // One mark, and the same in words for those who do not see it.
        Assert.Equal(2, html.Split("●</span><span class=\"unseen\">planned").Length);
        Assert.DoesNotContain(".csv", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Matrix_DraftOfAUnit_HasABoxAPairWithItsName()
    {
        var html = await RenderAsync<UnitMatrix>(("Draft", new UnitDraft(Unit)), ("Tasks", TaskShelf.Of([Stork], CultureInfo.GetCultureInfo("en"))));
        Assert.Equal(2, html.Split("type=\"checkbox\"").Length - 1);
        Assert.Equal(1, html.Split(" checked").Length - 1);
        Assert.Contains("Lesson 1, Stork: works towards S1 Holds still", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Revisit_NothingWritten_SaysWhatToDo() => Assert.Contains(
        "No tries yet in the lessons of this unit",
        await RenderAsync<RevisitSection>(("Revisit", new UnitRevisit { TriedLessonCount = 0, Items = [] })), StringComparison.Ordinal);

    [Fact]
    public async Task Debrief_ItemAndOpenQuestion_AreBothAsked()
    {
        var debrief = new LessonDebrief
        {
            LastDay = new DateOnly(2027, 3, 8), OpenQuestionKeys = ["DebriefStart"],
            Items = [new(ReviewKind.Decisions, "DecisionsLow", [6, 5, 1, 5, 0], "DecisionsLowAsk", [])],
        };
        var html = await RenderAsync<DebriefQuestions>(("Debrief", debrief));
        Assert.Contains("8 March 2027.", html, StringComparison.Ordinal);
        Assert.Contains("made by 5 pupils", html, StringComparison.Ordinal);
        Assert.Contains("about to choose where to begin?", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "one moment, no range")]
    [InlineData(3, "from 5 to 9 in 10")]
    public async Task Engagement_Looks_AreAChartATableAndTheirRange(int count, string said)
    {
        EngagementLook[] looks = [.. new[] { 12, 21, 18 }.Take(count).Select((n, i) => new EngagementLook(new(2027, 3, 8, 9, 10 * i, 0, TimeSpan.Zero), n, 24, Guid.NewGuid()))];
        var html = await RenderAsync<EngagementSection>(
            ("Engagement", new LessonEngagement { Looks = looks }), ("Scope", new EvidenceScope(Guid.Empty, Guid.Empty)), ("Zone", TimeZoneInfo.Utc));
        Assert.Contains(said, html, StringComparison.Ordinal);
        Assert.Contains("Looks around the hall: 09:00: 12 of 24", html, StringComparison.Ordinal);
        Assert.Equal(count + 1, html.Split("<tr><th scope=\"row\">").Length - 1);
    }

    [Fact]
    public void ToUnit_OutcomeRemoved_TakesItsTicksAlong()
    {
        var draft = new UnitDraft(Unit);
        draft.Outcomes.RemoveAt(0);
        Assert.Empty(draft.ToUnit().Content.Lessons[0].Tasks[0].OutcomeIds);
    }

    [Fact]
    public void DayOf_NoDayTyped_IsAWeekAfterTheOneBefore() =>
        Assert.Equal(new DateOnly(2027, 3, 15), new UnitDraft(Unit with { FirstDay = new DateOnly(2027, 3, 8) }).DayOf(1, default));

    private static async Task<string> RenderAsync<T>(params (string Name, object Value)[] parameters) where T : IComponent
    {
        await using var services = new ServiceCollection().AddLogging().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en-GB");
            var given = ParameterView.FromDictionary(parameters.ToDictionary(p => p.Name, p => (object?)p.Value));
            return WebUtility.HtmlDecode((await renderer.RenderComponentAsync<T>(given)).ToHtmlString());
        });
    }
}
