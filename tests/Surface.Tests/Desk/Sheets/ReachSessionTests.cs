using Slantwise.Desk.Pages.Sheets;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Desk.Sheets;

public sealed class ReachSessionTests(DemoFolder demo)
{
    private static readonly DateOnly Day = new(2026, 11, 26);

    [Fact]
    public async Task Look_LevelsTakenOff_ChangesTheWordsWithoutANewFit()
    {
        var (session, sheet, kept, policy) = await OpenAsync();
        var whole = await session.LookAsync(sheet, kept, policy, TestContext.Current.CancellationToken);
        var hardest = sheet with { Tasks = [.. sheet.Tasks.Select(t => t with { Levels = [t.Levels[^1]] })] };
        var fewer = await session.LookAsync(hardest, kept, policy, TestContext.Current.CancellationToken);
        Assert.Equal(1, session.FitCount);
        Assert.NotEqual(whole[0].Reading.Headline, fewer[0].Reading.Headline);
        Assert.Single(fewer[0].Rows[0].Tenths);
    }

    [Fact]
    public async Task Look_AtAPupil_RowsAndChartAreByLabelAndHoldTheSameTries()
    {
        var (session, sheet, kept, policy) = await OpenAsync();
        var view = (await session.LookAsync(sheet, kept, policy, TestContext.Current.CancellationToken))[0];
        Assert.Equal(view.Rows.Select(r => r.Label).Order(StringComparer.InvariantCultureIgnoreCase), view.Rows.Select(r => r.Label));
        Assert.Contains($" {view.Rows.Sum(r => r.TrialCount)} tries", view.Reading.Grounds);
        Assert.All(view.Rows.SelectMany(r => r.Tenths), t => Assert.True(t is null || (t.Value.LowTenthsCount >= 0 && t.Value.LowTenthsCount <= t.Value.HighTenthsCount && t.Value.HighTenthsCount <= 10)));
        Assert.NotNull(view.Chart);
    }

    [Fact]
    public async Task Open_ASheetThatWasUsed_LooksAtTheClassThatUsedItLast()
    {
        var (session, _, _, _) = await OpenAsync();
        Assert.Contains(session.Classes, c => c.Id == session.ClassId);
    }

    [Theory]
    [InlineData(90, 60)]
    [InlineData(0, 90)]
    [InlineData(60, 100)]
    public async Task Look_WithoutABandOrAClass_AnswersNothing(int low, int high)
    {
        var (session, sheet, kept, policy) = await OpenAsync();
        (session.LowOf100, session.HighOf100) = (low, high);
        Assert.Empty(await session.LookAsync(sheet, kept, policy, TestContext.Current.CancellationToken));
        (session.LowOf100, session.HighOf100, session.ClassId) = (60, 90, null);
        Assert.Empty(await session.LookAsync(sheet, kept, policy, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Look_WithAWiderBand_ReachesMore()
    {
        var (session, sheet, kept, policy) = await OpenAsync();
        var hardest = sheet with { Tasks = [sheet.Tasks[0] with { Levels = [sheet.Tasks[0].Levels[^1]] }] };
        var usual = await session.LookAsync(hardest, kept, policy, TestContext.Current.CancellationToken);
        (session.LowOf100, session.HighOf100) = (5, 99);
        var wide = await session.LookAsync(hardest, kept, policy, TestContext.Current.CancellationToken);
        Assert.Equal(1, session.FitCount);
        Assert.True(Within(wide) > Within(usual) + 5, $"{Within(wide)} against {Within(usual)}");
        int Within(IReadOnlyList<ReachView> views) => int.Parse(views[0].Reading.Headline.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void PlaceOf_AnotherDose_IsBesideItsForm()
    {
        Level Of(string name, decimal amount, DoseKind kind = DoseKind.HoldS) => new() { Id = Guid.NewGuid(), Name = name, Dose = new Dose(kind, amount) };
        Level[] levels = [Of("Tuck", 5), Of("Tuck", 10), Of("Straight", 5)];
        Assert.Equal(0, ReachAdding.PlaceOf(levels, Of("Tuck", 3)));
        Assert.Equal(1, ReachAdding.PlaceOf(levels, Of("Tuck", 8)));
        Assert.Equal(2, ReachAdding.PlaceOf(levels, Of("Tuck", 15)));
        Assert.Equal(3, ReachAdding.PlaceOf(levels, Of("Other", 1)));
        // A larger target is easier, so it comes first.
        Assert.Equal(0, ReachAdding.PlaceOf([Of("Throw", .5m, DoseKind.TargetSizeM)], Of("Throw", 1, DoseKind.TargetSizeM)));
    }

    private async Task<(ReachSession Session, SheetContent Sheet, IReadOnlyList<MovementTask> Kept, SafetyPolicy Policy)> OpenAsync()
    {
        using var folder = await demo.CopyAsync();
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var school = (await store.ListSchoolsAsync()).Single();
        var sheet = (await store.ListSheetsAsync(school.Id)).First(s => s.LatestVersion > 0);
        var session = new ReachSession(store, school.Id, () => Day);
        await session.OpenAsync(sheet.Id);
        // What the class did is loaded with the first look, so that the folder may go.
        await session.LookAsync(sheet.Draft, await store.ListTasksAsync(school.Id), school.Policy, TestContext.Current.CancellationToken);
        return (session, sheet.Draft, await store.ListTasksAsync(school.Id), school.Policy);
    }
}
