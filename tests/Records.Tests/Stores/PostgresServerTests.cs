using Npgsql;
using Slantwise.Storage.Postgres;

namespace Slantwise.Records.Tests.Stores;

/// <summary>What only a server can be: without the database, with another program's backup, without its tools.</summary>
public sealed class PostgresServerTests
{
    [Fact]
    public async Task Open_DatabaseThatIsMissing_IsMade()
    {
        await using var test = await TestStore.OpenAsync(Database.Postgres);
        var missing = new NpgsqlConnectionStringBuilder(test.PostgresConnectionString);
        missing.Database += "_new";
        await using (var store = await PostgresStore.OpenAsync(missing.ToString(), test.Clock)) Assert.Empty(await store.ListSchoolsAsync());
        await RunAsync(test.PostgresConnectionString, $"DROP DATABASE {missing.Database} WITH (FORCE)");
    }

    [Fact]
    public async Task Open_WithoutADatabaseName_SaysWhatToAdd()
    {
        var refused = await Assert.ThrowsAsync<ArgumentException>(() => PostgresStore.OpenAsync("Host=localhost;Username=u", new ManualClock()));
        Assert.Contains("Database=", refused.Message);
    }

    [Fact]
    public async Task Open_DatabaseOfANewerVersion_IsRefused()
    {
        await using var test = await TestStore.OpenAsync(Database.Postgres);
        await RunAsync(test.PostgresConnectionString, """INSERT INTO schema_versions VALUES ('29990101000000_Later', '99.0')""");
        var refused = await Assert.ThrowsAsync<InvalidDataException>(() => test.OpenAgainAsync());
        Assert.Contains("newer version", refused.Message);
    }

    [Fact]
    public async Task Restore_BackupOfAnotherProgram_IsRefusedAndChangesNothing()
    {
        await using var test = await TestStore.OpenAsync(Database.Postgres);
        await new SampleSchool().SaveToAsync(test.Store);
        var server = new NpgsqlConnectionStringBuilder(test.PostgresConnectionString);
        var theirs = server.Database + "_theirs";
        await RunAsync(test.PostgresConnectionString, $"CREATE DATABASE {theirs}");
        await RunAsync(new NpgsqlConnectionStringBuilder(test.PostgresConnectionString) { Database = theirs }.ToString(), "CREATE TABLE songs (title text)");
        await PostgresTool.RunAsync("pg_dump", server, ["--format=custom", $"--file={test.PathOf("theirs")}", $"--dbname={theirs}"], TestContext.Current.CancellationToken);
        await RunAsync(test.PostgresConnectionString, $"DROP DATABASE {theirs} WITH (FORCE)");

        var refused = await Assert.ThrowsAsync<InvalidDataException>(() => test.Store.RestoreAsync(test.PathOf("theirs")));
        Assert.Contains("another program", refused.Message);
        Assert.Single(await test.Store.ListSchoolsAsync());
    }

    [Fact]
    public async Task Restore_ThatTheServerBreaksOff_ChangesNothing()
    {
        await using var test = await TestStore.OpenAsync(Database.Postgres);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        await test.Store.BackupAsync(test.PathOf("a.backup"));
        await test.Store.AppendEntriesAsync(sample.Id, [sample.Trial(1)]);
        // Somebody's view of our table keeps it from being dropped, half-way through the restore.
        await RunAsync(test.PostgresConnectionString, "CREATE VIEW theirs AS SELECT name FROM schools");

        var refused = await Assert.ThrowsAsync<InvalidOperationException>(() => test.Store.RestoreAsync(test.PathOf("a.backup")));
        Assert.Contains("nothing was changed", refused.Message);
        Assert.Single(await test.Store.ListEntriesAsync(sample.Id, sample.Lesson.Id));
        Assert.Equal(4, (await test.Store.ListEnrolmentsAsync(sample.Id)).Count);
        Assert.Single(await test.Store.ListRestrictionsAsync(sample.Id));
        Assert.Single((await test.Store.AppendEntriesAsync(sample.Id, [sample.Trial(2)])).AddedIds);
    }

    [Fact]
    public async Task Backup_WithoutPostgresPrograms_SaysWhatToInstall()
    {
        var refused = await Assert.ThrowsAsync<InvalidOperationException>(
            () => PostgresTool.RunAsync("pg_dump_that_is_not_there", null, [], TestContext.Current.CancellationToken));
        Assert.Contains("postgresql-client", refused.Message);
    }

    private static async Task RunAsync(string connectionString, string sql)
    {
        await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(connectionString) { Pooling = false }.ToString());
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }
}
