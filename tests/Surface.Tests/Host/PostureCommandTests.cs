using System.Xml.Linq;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Host;

public sealed class PostureCommandTests
{
    private const string Stork = """
        { "key": "my-stork", "group": "upright", "lean": -5, "joints": { "hipFlexion.left": 45, "kneeFlexion.left": 90 }, "touches": ["foot.right"] }
        """;

    [Fact]
    public async Task Posture_OfAFile_SaysWhetherItHoldsAndOverWhatItTips()
    {
        using var folder = new TempFolder();
        var file = folder.Write("stork.json", Stork);
        var run = await HostProgram.RunAsync("posture", file, "--age", "10", "--sex", "female");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("right foot", run.Output);
        // The median girl of 10 years: 138.0 cm. Source: [CDC2000].
        Assert.Contains("138 cm", run.Output);
    }

    [Fact]
    public async Task Posture_AsJson_HoldsSharesThatSumToOne()
    {
        var run = await HostProgram.RunAsync("posture", "tripod", "--json");
        var answer = run.Json();
        var shares = answer["loads"]!["shares"]!.AsArray();
        Assert.Equal(3, shares.Count);
        Assert.Equal(1, shares.Sum(s => s!["shareFraction"]!.GetValue<double>()), 1e-9);
        Assert.Equal("statics", answer["loads"]!["basis"]!.GetValue<string>());
        Assert.Equal(shares.Single(s => s!["part"]!.GetValue<string>() == "crown")!["shareFraction"]!.GetValue<double>(), answer["headFraction"]!.GetValue<double>(), 1e-12);
        Assert.Contains("headWeight", answer["demands"]!.AsArray().Select(d => d!.GetValue<string>()));
    }

    [Fact]
    public async Task Posture_WithWeightOnTheHead_GivesFiguresAndCautionsAndNoVerdict()
    {
        var run = await HostProgram.RunAsync("posture", "headstand");
        Assert.Contains("40 to 48 %", run.Output);
        Assert.Contains("No measurements of children", run.Output);
        Assert.Contains("Not allowed on a sheet", run.Output);
        Assert.DoesNotContain("safe", run.Output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Posture_WhoseContactsCannotTouch_SaysTheGapInCentimetres()
    {
        using var folder = new TempFolder();
        var file = folder.Write("far.json", """{ "key": "far", "group": "upright", "touches": ["foot.left", "foot.right", "hand.left", "crown"] }""");
        var run = await HostProgram.RunAsync("posture", file);
        Assert.Equal(2, run.ExitCode);
        Assert.Matches(@"by \d+\.\d cm for a stature of 140 cm", Assert.Single(run.ErrorLines));
    }

    [Fact]
    public async Task Posture_WithSeveralMistakes_NamesEach()
    {
        using var folder = new TempFolder();
        var file = folder.Write("wrong.json", """{ "key": "a b", "group": "flying", "touches": ["tail"], "joints": { "kneeFlexion": 190 } }""");
        var run = await HostProgram.RunAsync("posture", file);
        Assert.Equal(2, run.ExitCode);
        foreach (var named in new[] { "key", "group", "tail", "kneeFlexion 190", "-5..155" }) Assert.Contains(named, string.Join('\n', run.ErrorLines));
    }

    [Theory]
    [InlineData("side")]
    [InlineData("front")]
    [InlineData("three-quarter")]
    public async Task Figure_AsSvg_IsWellFormedAndDescribed(string view)
    {
        using var folder = new TempFolder();
        var file = folder.At("f.svg");
        var run = await HostProgram.RunAsync("figure", "stork", "-o", file, "--view", view, "--size", "25");
        Assert.Equal(0, run.ExitCode);
        var svg = XDocument.Load(file).Root!;
        Assert.Equal("25mm", svg.Attribute("width")!.Value);
        Assert.Contains("foot", svg.Elements().First(e => e.Name.LocalName == "title").Value);
    }

    [Fact]
    public async Task Figure_AsPdf_IsOnePageOfTheSizeAskedFor()
    {
        using var folder = new TempFolder();
        var file = folder.At("f.pdf");
        var run = await HostProgram.RunAsync("figure", "crab", "-o", file, "--size", "80", "--balance");
        Assert.Equal(0, run.ExitCode);
        // 80 mm are 226.77 points, by the eyes of another program.
        Assert.Matches(@"Pages:\s+1\n", Tool.Run("pdfinfo", file));
        Assert.Matches(@"Page size:\s+226\.77 x 226\.77", Tool.Run("pdfinfo", file));
    }
}
