using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host;

public sealed class CommandErrorsTests(DemoFolder demo)
{
    private const string NoId = "01970000-0000-7000-8000-000000000000";

    // {0} is an empty folder, {1} a folder with the demo school; the number is the exit code.
    public static TheoryData<int, string> Mistakes => new()
    {
        { 2, "fly" },
        { 2, "serve --port 70000 --data {0}" },
        { 2, "serve --port many --data {0}" },
        { 2, "serve --bind nowhere --data {0}" },
        { 2, "demo" },
        { 2, "demo load --data {1}" },
        { 2, "demo simulate --pupils 0 --out {0}/out" },
        { 2, "demo simulate --pupils 5" },
        { 2, "import roster {0}/missing.csv --data {1}" },
        { 2, "import roster {0} --data {1}" },
        { 2, "import roster --data {1}" },
        { 2, "sheet print -o {0}/a.pdf --data {0}" },
        { 2, "sheet print --lesson latest --data {1}" },
        { 2, "sheet print -o {0}/a.pdf --size a3 --data {1}" },
        { 2, "sheet print -o {0}/a.pdf --lesson tomorrow --data {1}" },
        { 2, "sheet print -o {0}/a.pdf --lesson 1999-01-01 --data {1}" },
        { 2, "sheet print -o {0}/a.pdf --spare 61 --data {1}" },
        { 2, "sheet print -o {0}/a.pdf --spare 1 --spare-from 0 --data {1}" },
        { 2, "sheet print -o {0}/a.pdf --two-up --large-print --data {1}" },
        { 2, "sheet print -o {0} --data {1}" },
        { 2, "entries add {0}/missing.csv --lesson latest --data {1}" },
        { 2, "entries add {0}/missing.csv --data {1}" },
        { 2, "evidence --lesson " + NoId + " --data {1}" },
        { 2, "evidence --class 12Z --data {1}" },
        { 2, "evidence --data {0}" },
        { 2, "list lessons --data {0}" },
        { 2, "backup {0}/b.slantwise --data {0}/none" },
        { 2, "backup {0} --data {1}" },
        { 2, "backup {1}/slantwise.db --data {1}" },
        { 2, "restore {0}/missing.slantwise --data {1}" },
        { 2, "plan --data {0}" },
        { 2, "plan --lesson " + NoId + " --data {1}" },
        { 2, "plan --mats 0 --data {1}" },
        { 2, "plan --mats many --data {1}" },
        { 2, "plan --pupils-a-mat 31 --data {1}" },
        { 2, "plan --mats 10 --pupils-a-mat 3 --data {1}" },
        { 2, "plan --seed -1 --data {1}" },
        { 2, "posture" },
        { 2, "posture {0}/missing.json" },
        { 2, "posture {0}" },
        { 2, "posture stork --age 4" },
        { 2, "posture stork --age 10 --sex other" },
        { 2, "figure stork" },
        { 2, "figure stork -o {0}/f.bmp" },
        { 2, "figure stork -o {0}/f.svg --view top" },
        { 2, "figure stork -o {0}/f.svg --size 2" },
        { 2, "figure nobody -o {0}/f.svg" },
        { 2, "evidence --postgres nonsense" },
        { 1, "evidence --postgres Host=127.0.0.1;Port=9;Database=none;Timeout=2" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public async Task Command_WithAMistake_SaysOneLineAndFails(int exitCode, string line)
    {
        using var empty = new TempFolder();
        using var school = await demo.CopyAsync();
        var run = await HostProgram.RunAsync(Arguments(line, empty, school));
        Assert.Equal(exitCode, run.ExitCode);
        Assert.Empty(run.Output);
        var said = Assert.Single(run.ErrorLines);
        Assert.DoesNotContain("Exception", said);
        Assert.DoesNotContain("went wrong", said);
        Assert.True(said.Length > 20, said);
    }

    [Theory]
    [InlineData("evidence --json --data {0}")]
    [InlineData("sheet print --json --data {1}")]
    [InlineData("evidence --class 12Z --data {1} --json")]
    public async Task Command_WithAMistakeAndJson_SaysItAsJson(string line)
    {
        using var empty = new TempFolder();
        using var school = await demo.CopyAsync();
        var run = await HostProgram.RunAsync(Arguments(line, empty, school));
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.False(string.IsNullOrWhiteSpace(JsonNode.Parse(run.Error)!["error"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Command_InSpanish_SaysItInSpanish()
    {
        using var empty = new TempFolder();
        var run = await HostProgram.RunInAsync(null, "es_ES.UTF-8", "evidence", "--data", empty.FullPath);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("Aún no hay nada", run.Error);
    }

    [Fact]
    public async Task Evidence_OfAnEmptyFolder_MakesNoDatabase()
    {
        using var empty = new TempFolder();
        await HostProgram.RunAsync("evidence", "--data", empty.FullPath);
        Assert.Empty(Directory.EnumerateFileSystemEntries(empty.FullPath));
    }

    [Fact]
    public async Task Evidence_OfAFileThatIsNoDatabase_SaysSoAndLeavesIt()
    {
        using var folder = new TempFolder();
        var text = new string('x', 5000);
        folder.Write("slantwise.db", text);
        var run = await HostProgram.RunAsync("evidence", "--data", folder.FullPath);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("it is no Slantwise database", Assert.Single(run.ErrorLines));
        Assert.Equal(text, File.ReadAllText(folder.At("slantwise.db")));
    }

    private static string[] Arguments(string line, TempFolder empty, TempFolder school) =>
        line.Split(' ').Select(word => string.Format(null, word, empty.FullPath, school.FullPath)).ToArray();
}
