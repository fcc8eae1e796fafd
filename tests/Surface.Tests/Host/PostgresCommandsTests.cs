using Npgsql;

namespace Slantwise.Surface.Tests.Host;

public sealed class PostgresCommandsTests(DemoFolder demo) : IAsyncDisposable
{
    private static readonly string? Server = Environment.GetEnvironmentVariable("SLANTWISE_TEST_POSTGRES");

    private readonly string _database = $"slantwise_commands_{Guid.NewGuid():N}";

    [Fact]
    public async Task Commands_OnAServer_GiveWhatTheyGiveOnAFile()
    {
        Assert.SkipWhen(string.IsNullOrEmpty(Server), "SLANTWISE_TEST_POSTGRES names no PostgreSQL server.");
        using var file = await demo.CopyAsync();
        using var folder = new TempFolder();
        string[] onServer = ["--postgres", new NpgsqlConnectionStringBuilder(Server) { Database = _database }.ToString(), "--data", folder.FullPath];

        Assert.Equal(0, (await HostProgram.RunAsync(["demo", "load", .. onServer])).ExitCode);
        var lessons = await HostProgram.RunAsync("list", "lessons", "--json", "--data", file.FullPath);
        Assert.Equal(LessonCount(lessons), LessonCount(await HostProgram.RunAsync(["list", "lessons", "--json", .. onServer])));

        // The demo school lies around the day it was loaded on, and midnight may fall between two loadings: what is compared came from the file.
        Assert.Equal(0, (await HostProgram.RunAsync("backup", folder.At("file.slantwise"), "--data", file.FullPath)).ExitCode);
        var moved = await HostProgram.RunAsync(["restore", folder.At("file.slantwise"), .. onServer]);
        Assert.True(moved.ExitCode == 0, moved.Error);
        Assert.Equal(lessons.Json().ToJsonString(), (await HostProgram.RunAsync(["list", "lessons", "--json", .. onServer])).Json().ToJsonString());
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

    private static int LessonCount(ProgramRun run) => run.Json()["lessons"]!.AsArray().Count;

    public async ValueTask DisposeAsync()
    {
        if (string.IsNullOrEmpty(Server)) return;
        await using var connection = new NpgsqlConnection(Server);
        await connection.OpenAsync();
        await using var drop = new NpgsqlCommand($"DROP DATABASE IF EXISTS {_database} WITH (FORCE)", connection);
        await drop.ExecuteNonQueryAsync();
    }
}
