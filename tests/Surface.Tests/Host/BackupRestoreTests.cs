namespace Slantwise.Surface.Tests.Host;

public sealed class BackupRestoreTests(DemoFolder demo)
{
    [Fact]
    public async Task Restore_OfABackup_GivesTheSameEvidence()
    {
        using var school = await demo.CopyAsync();
        using var other = new TempFolder();
        var file = other.At("copy.slantwise");
        var before = await EvidenceAsync(school.FullPath);

        Assert.Equal(0, (await HostProgram.RunAsync("backup", file, "--data", school.FullPath)).ExitCode);
        var restored = (await HostProgram.RunAsync("restore", file, "--json", "--data", other.At("data"))).Json();

        Assert.Null(restored["before"]);
        Assert.Equal(before, await EvidenceAsync(other.At("data")));
    }

    [Fact]
    public async Task Restore_OverASchool_PutsWhatWasThereAside()
    {
        using var school = await demo.CopyAsync();
        using var other = new TempFolder();
        var small = other.Write("pupils.csv", "class,code\n5A,A1\n5A,A2\n");
        Assert.Equal(0, (await HostProgram.RunAsync("import", "roster", small, "--school", "Other", "--data", other.At("data"))).ExitCode);
        Assert.Equal(0, (await HostProgram.RunAsync("backup", other.At("other.slantwise"), "--data", other.At("data"))).ExitCode);
        var before = await EvidenceAsync(school.FullPath);

        var aside = (await HostProgram.RunAsync("restore", other.At("other.slantwise"), "--json", "--data", school.FullPath)).Json()["before"]!.GetValue<string>();
        Assert.Equal("Other", (await ClassesAsync(school.FullPath))["school"]!.GetValue<string>());

        Assert.Equal(0, (await HostProgram.RunAsync("restore", aside, "--data", other.At("again"))).ExitCode);
        Assert.Equal(before, await EvidenceAsync(other.At("again")));
    }

    [Fact]
    public async Task Restore_OfAnotherFile_RefusesAndChangesNothing()
    {
        using var school = await demo.CopyAsync();
        var file = school.Write("holiday.jpg", new string('j', 20_000));
        var before = await EvidenceAsync(school.FullPath);

        var run = await HostProgram.RunAsync("restore", file, "--data", school.FullPath);

        Assert.Equal(2, run.ExitCode);
        Assert.Single(run.ErrorLines);
        Assert.Equal(before, await EvidenceAsync(school.FullPath));
    }

    private static async Task<string> EvidenceAsync(string folder) =>
        (await HostProgram.RunAsync("evidence", "--lesson", "latest", "--json", "--data", folder)).Json().ToJsonString();

    private static async Task<System.Text.Json.Nodes.JsonObject> ClassesAsync(string folder) =>
        (await HostProgram.RunAsync("list", "classes", "--json", "--data", folder)).Json();
}
