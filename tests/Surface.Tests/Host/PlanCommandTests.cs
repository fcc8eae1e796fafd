using System.Globalization;

namespace Slantwise.Surface.Tests.Host;

public sealed class PlanCommandTests(DemoFolder demo)
{
    [Fact]
    public async Task Plan_OfTheNextLesson_SaysTheSameInWordsAndJson()
    {
        using var folder = await demo.CopyAsync();
        var words = await HostProgram.RunAsync("plan", "--lesson", "next", "--data", folder.FullPath);
        Assert.Equal(0, words.ExitCode);
        var json = (await HostProgram.RunAsync("plan", "--lesson", "next", "--json", "--data", folder.FullPath)).Json();
        foreach (var answer in new[] { "tries", "waiting", "lastDone", "more" }) Assert.Contains(json["answers"]![answer]!.GetValue<string>(), words.Output);
        Assert.All(json["warnings"]!.AsArray(), w => Assert.Contains(w!["sentence"]!.GetValue<string>(), words.Output));
        Assert.All(json["changes"]!.AsArray(), c => Assert.Contains(c!["sentence"]!.GetValue<string>(), words.Output));
        Assert.Equal(400, json["runCount"]!.GetValue<int>());
        Assert.Equal(json["plannedMats"]!.GetValue<int>(), json["plan"]!["matCount"]!.GetValue<int>());
        Assert.Equal(1, json["shares"]!.AsArray().Sum(s => s!["shareFraction"]!.GetValue<double>()), 1e-9);
        // The next one is the first that is not over; the demo school has lessons before and after it.
        var lessons = (await HostProgram.RunAsync("list", "lessons", "--json", "--data", folder.FullPath)).Json()["lessons"]!.AsArray();
        var days = lessons.Select(l => DateOnly.Parse(l!["date"]!.GetValue<string>(), CultureInfo.InvariantCulture)).ToList();
        var next = DateOnly.Parse(json["date"]!.GetValue<string>(), CultureInfo.InvariantCulture);
        Assert.Equal(days.Where(d => d >= DateOnly.FromDateTime(DateTime.Now)).Min(), next);
        Assert.True(days.Min() < next && days.Max() > next);
    }

    [Fact]
    public async Task Plan_WithFewerMats_GivesNoMoreTriesAndSaysHowManyPupilsShareOne()
    {
        using var folder = await demo.CopyAsync();
        async Task<(int Fewest, int Mats)> AskAsync(params string[] change)
        {
            var json = (await HostProgram.RunAsync(["plan", .. change, "--seed", "7", "--json", "--data", folder.FullPath])).Json();
            Assert.Equal(7UL, json["seed"]!.GetValue<ulong>());
            return (json["outlook"]!["fewestTrials"]!.GetValue<int>(), json["plan"]!["matCount"]!.GetValue<int>());
        }
        var usual = await AskAsync();
        var few = await AskAsync("--mats", "5");
        Assert.Equal(5, few.Mats);
        Assert.True(few.Fewest < usual.Fewest, $"{few.Fewest} and {usual.Fewest}");
        Assert.True((await AskAsync("--pupils-a-mat", "1")).Mats > usual.Mats);
    }

    // What is given is what is planned with, and nothing of it is kept.
    [Fact]
    public async Task Plan_WithRolesTimesAndStations_PlansWithThemAndSaysThem()
    {
        using var folder = await demo.CopyAsync();
        var json = (await HostProgram.RunAsync(
            "plan", "--lesson", "next", "--json", "--data", folder.FullPath, "--performers", "2", "--partners", "1", "--observers", "1", "--action", "12.5", "--in-a-row", "2", "--rest", "20",
            "--record", "15", "--writer", "observer", "--sets", "3", "--tries", "4", "--between-sets", "45", "--talk", "4", "--stations", "1", "--change", "30")).Json();
        var plan = json["plan"]!;
        Assert.Equal([2, 1, 1, 2, 3, 4, 1], new[] { "performersAMat", "partnersATurn", "observersATurn", "trialsATurn", "setCount", "trialsASet", "sideStationCount" }.Select(k => plan[k]!.GetValue<int>()));
        Assert.Equal([12.5, 20, 15, 45, 30], new[] { "actionS", "restS", "recordS", "betweenSetsS", "transitionS" }.Select(k => plan[k]!.GetValue<double>()));
        Assert.Equal(240, json["talkS"]!.GetValue<double>());
        Assert.Equal(2, json["choice"]!["performersAMat"]!.GetValue<int>());
        Assert.Null(json["kept"]);
        Assert.Null((await HostProgram.RunAsync("plan", "--lesson", "next", "--json", "--data", folder.FullPath)).Json()["choice"]!["performersAMat"]);
    }

    [Fact]
    public async Task Plan_OfALessonThatKeepsAChoice_StartsFromIt()
    {
        using var folder = await demo.CopyAsync();
        await using (var store = await LessonOfDemo.OpenAsync(folder))
        {
            var school = (await store.ListSchoolsAsync(TestContext.Current.CancellationToken)).Single().Id;
            foreach (var lesson in await store.ListLessonsAsync(school, TestContext.Current.CancellationToken))
                await store.SaveLessonAsync(lesson with { Practice = new() { PupilsAMat = 4, PartnersATurn = 1 } }, TestContext.Current.CancellationToken);
        }
        async Task<(int Mats, int Partners)> AskAsync(params string[] more)
        {
            var plan = (await HostProgram.RunAsync(["plan", "--lesson", "next", "--json", "--data", folder.FullPath, .. more])).Json()["plan"]!;
            return (plan["matCount"]!.GetValue<int>(), plan["partnersATurn"]!.GetValue<int>());
        }
        Assert.Equal((7, 1), await AskAsync());
        Assert.Equal((5, 1), await AskAsync("--mats", "5"));
        Assert.Equal((14, 0), await AskAsync("--usual"));
    }

    [Fact]
    public async Task Plan_WithSomethingOutOfRange_IsRefusedWithTheRanges()
    {
        using var folder = await demo.CopyAsync();
        var run = await HostProgram.RunAsync("plan", "--performers", "5", "--data", folder.FullPath);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("performers 1 to 4", run.Error);
    }

    [Fact]
    public async Task Plan_InSpanish_SaysItInSpanish()
    {
        using var folder = await demo.CopyAsync();
        var run = await HostProgram.RunInAsync(null, "es_ES.UTF-8", "plan", "--lesson", "next", "--data", folder.FullPath);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("sesiones simuladas", run.Output);
        Assert.DoesNotMatch(@"\b(tries|mats|waiting|lesson)\b", run.Output);
    }
}
