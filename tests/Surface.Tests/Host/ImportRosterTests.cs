namespace Slantwise.Surface.Tests.Host;

public sealed class ImportRosterTests
{
    private const string Pupils = "name,class,code\nAmal,7 Heron,K7M\nBo,7 Heron,B2Q\nCai,7 Heron,C3R\n";

    [Fact]
    public async Task Import_OfTheSameFileTwice_ChangesNothing()
    {
        using var folder = new TempFolder();
        var file = folder.Write("pupils.csv", Pupils);
        var first = (await ImportAsync(folder, file, "--school", "Pellin")).Json();
        Assert.Equal(4, first["added"]!.AsArray().Count);
        var classes = await ClassesAsync(folder);
        Assert.Contains("\"pupilCount\":3", classes);

        var second = (await ImportAsync(folder, file)).Json();

        Assert.Empty(second["added"]!.AsArray());
        Assert.Empty(second["changed"]!.AsArray());
        Assert.Empty(second["left"]!.AsArray());
        Assert.Equal(3, second["sameCount"]!.GetValue<int>());
        Assert.Equal(classes, await ClassesAsync(folder));
    }

    [Fact]
    public async Task Import_WithADryRun_SavesNothing()
    {
        using var folder = new TempFolder();
        await ImportAsync(folder, folder.Write("pupils.csv", Pupils), "--school", "Pellin");
        var classes = await ClassesAsync(folder);

        var run = (await ImportAsync(folder, folder.Write("more.csv", Pupils + "Dee,7 Kestrel,D4S\n"), "--dry-run")).Json();

        Assert.False(run["saved"]!.GetValue<bool>());
        Assert.NotEmpty(run["added"]!.AsArray());
        Assert.Equal(classes, await ClassesAsync(folder));
    }

    [Fact]
    public async Task Import_WithBadRows_NamesEachAndSavesNothing()
    {
        using var folder = new TempFolder();
        await ImportAsync(folder, folder.Write("pupils.csv", Pupils), "--school", "Pellin");
        var classes = await ClassesAsync(folder);
        var bad = folder.Write("bad.csv", Pupils + "Dee,,D4S\nEli,7 Heron,no good code!\nFay,7 Heron,F5T\n");

        var run = await HostProgram.RunAsync("import", "roster", bad, "--data", folder.At("data"));

        Assert.Equal(2, run.ExitCode);
        Assert.Equal(3, run.ErrorLines.Length);
        Assert.Contains("bad.csv, line 5", run.ErrorLines[0]);
        Assert.Contains("bad.csv, line 6", run.ErrorLines[1]);
        Assert.StartsWith("Nothing is imported", run.ErrorLines[2]);
        Assert.Equal(classes, await ClassesAsync(folder));
    }

    [Fact]
    public async Task Import_IntoNothing_AsksForTheSchoolsName()
    {
        using var folder = new TempFolder();
        var run = await HostProgram.RunAsync("import", "roster", folder.Write("pupils.csv", Pupils), "--data", folder.At("data"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--school", Assert.Single(run.ErrorLines));
    }

    private static Task<ProgramRun> ImportAsync(TempFolder folder, string file, params string[] more) =>
        HostProgram.RunAsync(["import", "roster", file, "--json", "--data", folder.At("data"), .. more]);

    private static async Task<string> ClassesAsync(TempFolder folder) =>
        (await HostProgram.RunAsync("list", "classes", "--json", "--data", folder.At("data"))).Json().ToJsonString();
}
