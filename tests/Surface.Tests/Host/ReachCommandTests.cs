using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host;

public sealed class ReachCommandTests(DemoFolder demo)
{
    [Fact]
    public async Task Reach_OfThePlannedLesson_SaysTheSameInWordsAndJson()
    {
        using var folder = await demo.CopyAsync();
        var words = await HostProgram.RunAsync("reach", "--lesson", "latest", "--data", folder.FullPath);
        Assert.Equal(0, words.ExitCode);
        var json = (await HostProgram.RunAsync("reach", "--lesson", "latest", "--json", "--data", folder.FullPath)).Json();
        var tasks = json["tasks"]!.AsArray();
        Assert.NotEmpty(tasks);
        foreach (var task in tasks)
        {
            Assert.Contains(task!["headline"]!.GetValue<string>(), words.Output);
            Assert.Contains(task["grounds"]!.GetValue<string>(), words.Output);
            Assert.All(task["notes"]!.AsArray(), n => Assert.Contains(n!["sentence"]!.GetValue<string>(), words.Output));
            Assert.True(task["trialCount"]!.GetValue<int>() > 500);
            Assert.InRange(task["includedCount"]!.GetValue<double>(), 0, task["pupilCount"]!.GetValue<int>());
            var labels = task["pupils"]!.AsArray().Select(p => p!["label"]!.GetValue<string>()).ToList();
            Assert.Equal(labels.Order(StringComparer.InvariantCultureIgnoreCase), labels);
        }
    }

    [Fact]
    public async Task Reach_OfTheFirstLesson_KnowsNothingOfWhatCameAfter()
    {
        using var folder = await demo.CopyAsync();
        var lessons = (await HostProgram.RunAsync("list", "lessons", "--json", "--data", folder.FullPath)).Json();
        var first = lessons["lessons"]!.AsArray()[0]!["id"]!.GetValue<string>();
        var json = (await HostProgram.RunAsync("reach", "--lesson", first, "--json", "--data", folder.FullPath)).Json();
        Assert.All(json["tasks"]!.AsArray(), task =>
        {
            Assert.Equal(0, task!["trialCount"]!.GetValue<int>());
            Assert.Contains("wide assumptions", task["headline"]!.GetValue<string>());
        });
    }

    [Fact]
    public async Task Reach_WithAnotherBand_CountsByIt()
    {
        using var folder = await demo.CopyAsync();
        async Task<double> IncludedAsync(params string[] band)
        {
            var json = (await HostProgram.RunAsync(["reach", "--lesson", "latest", .. band, "--json", "--data", folder.FullPath])).Json();
            return json["tasks"]!.AsArray().Sum(t => t!["includedCount"]!.GetValue<double>());
        }
        Assert.True(await IncludedAsync("--low", ".97", "--high", ".98") < .5 * await IncludedAsync());
    }

    [Theory]
    [InlineData("--low", "0.9", "--high", "0.6")]
    [InlineData("--low", "0", "--high", "0.9")]
    [InlineData("--low", "0.5", "--high", "1")]
    public async Task Reach_WithoutABand_RefusesInWords(params string[] band)
    {
        using var folder = await demo.CopyAsync();
        var run = await HostProgram.RunAsync(["reach", .. band, "--data", folder.FullPath]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("within reach", run.Error);
    }
}
