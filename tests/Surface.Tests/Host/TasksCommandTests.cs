using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host;

public sealed class TasksCommandTests(DemoFolder demo)
{
    [Fact]
    public async Task Check_OfATaskThatTheProgramExported_FindsNothing()
    {
        using var folder = new TempFolder();
        var exported = await HostProgram.RunAsync("tasks", "export", "one-foot-balance", "--output", folder.At("one.json"));
        Assert.Equal(0, exported.ExitCode);
        var run = await HostProgram.RunAsync("tasks", "check", folder.FullPath);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal("1 task. 0 findings.", run.Output.Trim());
    }

    [Fact]
    public async Task Check_OfASpoiltTask_EndsWith1AndNamesFileAndPart()
    {
        using var folder = new TempFolder();
        var text = (await HostProgram.RunAsync("tasks", "export", "one-foot-balance")).Output;
        folder.Write("one.json", text.Replace("My eyes rest on one spot.", "I balance properly."));
        var run = await HostProgram.RunAsync("tasks", "check", folder.FullPath);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("one.json, words.en.cues[0]: \"properly\" is vague", run.Output);
        var json = await HostProgram.RunAsync("tasks", "check", folder.FullPath, "--json");
        Assert.Equal(1, json.ExitCode);
        var said = JsonNode.Parse(json.Output)!;
        var finding = Assert.Single(said["findings"]!.AsArray())!;
        Assert.Equal(("one.json", "words.en.cues[0]", "DesignVague"), (finding["file"]!.GetValue<string>(), finding["part"]!.GetValue<string>(), finding["key"]!.GetValue<string>()));
        Assert.Equal(1, said["taskCount"]!.GetValue<int>());
    }

    [Theory]
    [InlineData("C.UTF-8", "Static balances", "  one-foot-balance         One-foot balance")]
    [InlineData("es_ES.UTF-8", "Equilibrios estáticos", "  one-foot-balance         Equilibrio sobre un pie")]
    public async Task List_InALanguage_NamesTheTasksUnderTheirPattern(string language, string pattern, string line)
    {
        var run = await HostProgram.RunInAsync(input: null, language, "tasks", "list");
        Assert.Equal(0, run.ExitCode);
        var lines = run.Output.Split('\n').Select(l => l.TrimEnd()).ToList();
        Assert.Equal(pattern, lines[0]);
        Assert.Contains(line, lines);
    }

    [Fact]
    public async Task Check_OfAFolderWithoutTasks_SaysSo()
    {
        using var folder = new TempFolder();
        var run = await HostProgram.RunAsync("tasks", "check", folder.FullPath);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("no task files", run.Error);
    }

    [Fact]
    public async Task Export_OfAKeyThatIsNotThere_SaysSo()
    {
        var run = await HostProgram.RunAsync("tasks", "export", "flying");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("flying", run.Error);
    }

    [Fact]
    public async Task Export_OwnTasks_AreAFileEachThatTheCheckReads()
    {
        using var data = await demo.CopyAsync();
        using var folder = new TempFolder();
        var run = await HostProgram.RunAsync("tasks", "export", "--own", folder.At("ours"), "--data", data.FullPath, "--json");
        Assert.True(run.ExitCode == 0, run.Error);
        var tasks = JsonNode.Parse(run.Output)!["tasks"]!.AsArray();
        Assert.Equal(6, tasks.Count);
        Assert.Equal(tasks.Select(t => t!["file"]!.GetValue<string>()).Order(), Directory.EnumerateFiles(folder.At("ours")).Select(f => Path.GetFileName(f)!).Order());
        // The demo school's tasks are the library's: their files are the library's too.
        var one = await HostProgram.RunAsync("tasks", "export", "one-foot-balance");
        Assert.Equal(one.Output, await File.ReadAllTextAsync(folder.At("ours/one-foot-balance.json")));
        // Six tasks alone lean on some that are not with them; nothing else is to be said.
        var findings = JsonNode.Parse((await HostProgram.RunAsync("tasks", "check", folder.At("ours"), "--json")).Output)!["findings"]!.AsArray();
        Assert.All(findings, f => Assert.Equal("DesignPrerequisiteUnknown", f!["key"]!.GetValue<string>()));
        run = await HostProgram.RunAsync("tasks", "export", "v-sit", "--own", folder.At("one"), "--data", data.FullPath);
        Assert.Equal("v-sit.json", Path.GetFileName(Assert.Single(Directory.EnumerateFiles(folder.At("one")))));
        Assert.Equal(2, (await HostProgram.RunAsync("tasks", "export", "flying", "--own", folder.At("none"), "--data", data.FullPath)).ExitCode);
    }

    [Fact]
    public async Task Export_OfNothing_SaysWhatToName()
    {
        var run = await HostProgram.RunAsync("tasks", "export");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--own", run.Error);
    }
}
