namespace Slantwise.Records.Tests.Floor;

public sealed class ContractSchemaTests
{
    private const string File = "src/Floor/contracts.schema.json";

    [Fact]
    public async Task Text_OfTheContracts_IsWhatTheFloorIsBuiltFrom()
    {
        var text = ContractSchema.Text();
        var path = Path.Combine(RepositoryRoot(), File);
        // To take a changed contract over: SLANTWISE_WRITE_CONTRACTS=1, run this test, and build the floor.
        if (Environment.GetEnvironmentVariable("SLANTWISE_WRITE_CONTRACTS") == "1") await System.IO.File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
        Assert.Equal(text, await System.IO.File.ReadAllTextAsync(path, TestContext.Current.CancellationToken));
    }

    private static string RepositoryRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (System.IO.File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) return folder.FullName;
        throw new InvalidOperationException("These tests run inside a checkout, below Slantwise.slnx.");
    }
}
