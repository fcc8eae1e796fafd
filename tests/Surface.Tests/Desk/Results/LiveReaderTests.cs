using Slantwise.Desk.Pages.Results;
using Slantwise.Records.Evidence.Live;
using Slantwise.Records.Lessons;

namespace Slantwise.Surface.Tests.Desk.Results;

public sealed class LiveReaderTests
{
    [Fact]
    public async Task Look_SetTyped_SaysItsLevelWithItsTries()
    {
        var (reader, record) = (new LiveReader(Nothing), Typed("2411011"));
        var view = await LookAsync(reader, record);
        var level = Assert.Single(view.Levels);
        Assert.Equal((SampleLesson.Ada.Id, 7), (view.PupilId, view.EntryCount));
        Assert.Equal(("One-foot balance", 2, 5, 5, TodaysTries.AsExpected), (level.TaskName, level.LevelNumber, level.HereCount, level.AllCount, level.Today));
        Assert.Equal((4, 5), (level.TodayShare.SuccessCount, level.TodayShare.TrialCount));
        Assert.InRange(level.OfTenCount, level.LowTenthsCount, level.HighTenthsCount);
        Assert.Null(view.Question);
    }

    [Theory]
    [InlineData("", 0, 0)]
    [InlineData("3", 1, 0)]
    [InlineData("340", 1, 1)]
    public async Task Look_HardlyAnythingTyped_SaysThatTriesAreMissing(string keys, int levels, int tries)
    {
        var view = await LookAsync(new LiveReader(Nothing), Typed(keys));
        Assert.Equal(levels, view.Levels.Count);
        Assert.All(view.Levels, level => Assert.Equal((true, tries), (level.IsFew, level.AllCount)));
    }

    [Fact]
    public async Task Look_GoneOn_IsAsALookFromTheStart()
    {
        var reader = new LiveReader(Nothing);
        var record = Typed("2411011{Enter}3500000");
        for (var count = 0; count < record.Entries.Count; count++) await LookAsync(reader, record with { Entries = [.. record.Entries.Take(count)] });
        foreach (var isInFull in new[] { false, true })
        {
            var (gone, anew) = (await LookAsync(reader, record, isInFull), await LookAsync(new LiveReader(Nothing), record, isInFull));
            Assert.Equal(Spoken(anew), Spoken(gone));
        }
        static object Spoken(LiveView view) => (view.EntryCount, view.Question?.ReasonKey, string.Join('|', view.Levels.Select(l => (l.LevelNumber, l.OfTenCount, l.LowTenthsCount, l.HighTenthsCount, l.IsFew, l.Today))));
    }

    [Fact]
    public async Task Look_GivenUp_LeavesTheNextOneAsItShouldBe()
    {
        var loads = 0;
        var reader = new LiveReader(() =>
        {
            loads++;
            return Nothing();
        });
        var record = Typed("2411011");
        using var given = new CancellationTokenSource();
        await given.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => reader.LookAsync(record, SampleLesson.Ada, false, given.Token));
        var looks = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => LookAsync(reader, record)));
        Assert.All(looks, view => Assert.Equal(7, view.EntryCount));
        Assert.Equal(1, loads);
    }

    private static Task<IReadOnlyList<LessonRecord>> Nothing() => Task.FromResult<IReadOnlyList<LessonRecord>>([]);

    private static Task<LiveView> LookAsync(LiveReader reader, LessonRecord record, bool isInFull = false) =>
        reader.LookAsync(record, SampleLesson.Ada, isInFull, TestContext.Current.CancellationToken);

    private static LessonRecord Typed(string keys)
    {
        var sheet = SampleLesson.Sheet();
        return SampleLesson.Record(sheet) with { Entries = new Typist(sheet).Press(keys).Leave().Log };
    }
}
