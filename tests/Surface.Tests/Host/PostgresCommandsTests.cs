using Npgsql;

namespace Slantwise.Surface.Tests.Host;

public sealed class PostgresCommandsTests : IAsyncDisposable
{
    private static readonly string? Server = Environment.GetEnvironmentVariable("SLANTWISE_TEST_POSTGRES");

    private readonly string _database = $"slantwise_commands_{Guid.NewGuid():N}";

    [Fact]
    public async Task Commands_OnAServer_GiveWhatTheyGiveOnAFile()
    {
        Assert.SkipWhen(string.IsNullOrEmpty(Server), "SLANTWISE_TEST_POSTGRES names no PostgreSQL server.");
        using var folder = new TempFolder();
        using var file = new TempFolder();
        string[] onServer = ["--postgres", new NpgsqlConnectionStringBuilder(Server) { Database = _database }.ToString(), "--data", folder.FullPath];
        await LoadBothAsync(file, onServer);
        var evidence = await HostProgram.RunAsync("evidence", "--lesson", "latest", "--json", "--data", file.FullPath);
        var fromServer = await HostProgram.RunAsync(["evidence", "--lesson", "latest", "--json", .. onServer]);
        Assert.Equal(evidence.Json().ToJsonString(), fromServer.Json().ToJsonString());

        var backup = await HostProgram.RunAsync(["backup", folder.At("copy.slantwise"), .. onServer]);
        Assert.True(backup.ExitCode == 0, backup.Error);
        var restore = await HostProgram.RunAsync(["restore", folder.At("copy.slantwise"), .. onServer]);
        Assert.True(restore.ExitCode == 0, restore.Error);
        Assert.Equal(fromServer.Output, (await HostProgram.RunAsync(["evidence", "--lesson", "latest", "--json", .. onServer])).Output);
        Assert.False(File.Exists(folder.At("slantwise.db")));
    }

    // The demo school lies around the day it was loaded on. Where midnight fell between the two loadings, both are loaded once more.
    private async Task LoadBothAsync(TempFolder file, string[] onServer)
    {
        for (var isLast = false; ; isLast = true)
        {
            Assert.Equal(0, (await HostProgram.RunAsync(["demo", "load", .. onServer])).ExitCode);
            Assert.Equal(0, (await HostProgram.RunAsync("demo", "load", "--data", file.FullPath)).ExitCode);
            var (fromFile, fromServer) = (await HostProgram.RunAsync("list", "lessons", "--json", "--data", file.FullPath), await HostProgram.RunAsync(["list", "lessons", "--json", .. onServer]));
            if (fromFile.Json().ToJsonString() == fromServer.Json().ToJsonString()) return;
            Assert.False(isLast, fromServer.Output);
            await DropAsync();
            foreach (var kept in Directory.GetFiles(file.FullPath)) File.Delete(kept);
        }
    }

    private async Task DropAsync()
    {
        await using var connection = new NpgsqlConnection(Server);
        await connection.OpenAsync();
        await using var drop = new NpgsqlCommand($"DROP DATABASE IF EXISTS {_database} WITH (FORCE)", connection);
        await drop.ExecuteNonQueryAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (string.IsNullOrEmpty(Server)) return;
        await DropAsync();
    }
}
