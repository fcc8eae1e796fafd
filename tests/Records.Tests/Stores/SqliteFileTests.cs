using Microsoft.Data.Sqlite;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Records.Tests.Stores;

/// <summary>What only a file can be: another program's, damaged, newer, left behind by a killed process.</summary>
public sealed class SqliteFileTests
{
    [Fact]
    public async Task Restore_DatabaseOfAnotherProgram_IsRefusedAndChangesNothing()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        Run(test.PathOf("theirs.db"), "CREATE TABLE songs (title TEXT); INSERT INTO songs VALUES ('La');");
        var refused = await Assert.ThrowsAsync<InvalidDataException>(() => test.Store.RestoreAsync(test.PathOf("theirs.db")));
        Assert.Contains("another program", refused.Message);
        Assert.Single(await test.Store.ListSchoolsAsync());
    }

    [Fact]
    public async Task Restore_BackupOfANewerVersion_IsRefusedAndChangesNothing()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        await test.Store.BackupAsync(test.PathOf("a.backup"));
        Run(test.PathOf("a.backup"), "INSERT INTO schema_versions VALUES ('29990101000000_Later', '99.0'); DELETE FROM restrictions;");
        var refused = await Assert.ThrowsAsync<InvalidDataException>(() => test.Store.RestoreAsync(test.PathOf("a.backup")));
        Assert.Contains("29990101000000_Later", refused.Message);
        Assert.Single(await test.Store.ListRestrictionsAsync(sample.Id));
    }

    [Fact]
    public async Task Restore_BackupWithRowsWithoutAParent_IsRefused()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        await test.Store.BackupAsync(test.PathOf("a.backup"));
        Run(test.PathOf("a.backup"), "PRAGMA foreign_keys = OFF; DELETE FROM schools;");
        await Assert.ThrowsAsync<InvalidDataException>(() => test.Store.RestoreAsync(test.PathOf("a.backup")));
        Assert.Single(await test.Store.ListSchoolsAsync());
    }

    [Fact]
    public async Task Backup_File_IsOnePlainDatabaseThatAReadOnlyDiskCanServe()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        await new SampleSchool().SaveToAsync(test.Store);
        await test.Store.BackupAsync(test.PathOf("a.backup"));
        var header = (await File.ReadAllBytesAsync(test.PathOf("a.backup")))[..100];
        // Bytes 18 and 19 are 1 for a rollback journal, 2 for WAL; 68 to 71 the application id. Source: [SQLite2026] section 1.3.
        Assert.Equal([1, 1], header[18..20]);
        Assert.Equal("SltW"u8.ToArray(), header[68..72]);
    }

    [Theory]
    [InlineData("pupil,code\n")]
    [InlineData("SQLite format 3\0 but not really")]
    public async Task Open_FileThatIsNoDatabase_IsRefusedAndLeftAsItWas(string text)
    {
        var folder = Directory.CreateTempSubdirectory("slantwise-store-").FullName;
        var file = Path.Combine(folder, "slantwise.db");
        await File.WriteAllTextAsync(file, text);
        var refused = await Assert.ThrowsAsync<InvalidDataException>(() => SqliteStore.OpenAsync(file, new ManualClock()));
        Assert.Contains(file, refused.Message);
        Assert.Equal(text, await File.ReadAllTextAsync(file));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Open_DatabaseOfAnotherProgram_IsRefusedAndLeftAsItWas()
    {
        var folder = Directory.CreateTempSubdirectory("slantwise-store-").FullName;
        var file = Path.Combine(folder, "slantwise.db");
        Run(file, "CREATE TABLE songs (title TEXT)");
        var before = await File.ReadAllBytesAsync(file);
        await Assert.ThrowsAsync<InvalidDataException>(() => SqliteStore.OpenAsync(file, new ManualClock()));
        Assert.Equal(before, await File.ReadAllBytesAsync(file));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Open_AgainAfterClosing_KeepsTheRecords()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        await test.Store.DisposeAsync();
        var again = await test.OpenAgainAsync();
        Assert.Equal(4, (await again.ListPupilsAsync(sample.Id)).Count);
        Assert.False(File.Exists(test.SqliteFile + "-updating"), "The lock of the update is gone.");
    }

    [Fact]
    public async Task Open_AfterAKilledFirstStart_FinishesTheTables()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        // As a process killed in its first update leaves it: marked as ours, the tool's lock row, no tables.
        Run(test.PathOf("killed.db"),
            $"PRAGMA application_id = {SqliteStore.ApplicationId}; PRAGMA journal_mode = WAL;"
            + "CREATE TABLE __EFMigrationsLock (Id INTEGER NOT NULL CONSTRAINT PK___EFMigrationsLock PRIMARY KEY, Timestamp TEXT NOT NULL);"
            + "INSERT INTO __EFMigrationsLock VALUES (1, '2026-09-01 08:00:00+00:00');");
        await using var store = await SqliteStore.OpenAsync(test.PathOf("killed.db"), test.Clock);
        Assert.Empty(await store.ListSchoolsAsync());
    }

    [Fact]
    public async Task Open_ByFourAtOnce_MakesTheTablesOnce()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        var stores = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => SqliteStore.OpenAsync(test.PathOf("fresh.db"), test.Clock))));
        await new SampleSchool().SaveToAsync(stores[0]);
        foreach (var store in stores)
        {
            Assert.Single(await store.ListSchoolsAsync());
            await store.DisposeAsync();
        }
    }

    [Fact]
    public async Task Backup_OntoTheStoreItself_IsRefused()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        await Assert.ThrowsAsync<ArgumentException>(() => test.Store.BackupAsync(test.SqliteFile));
        await Assert.ThrowsAsync<ArgumentException>(() => test.Store.RestoreAsync(test.SqliteFile));
    }

    [Fact]
    public async Task Connections_OfTheStore_WaitForTheDiskAndHoldForeignKeys()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        await using var context = new SqliteContext(SqliteStore.OptionsFor(SqliteStore.ConnectionStringOf(test.SqliteFile)));
        var connection = (SqliteConnection)Microsoft.EntityFrameworkCore.RelationalDatabaseFacadeExtensions.GetDbConnection(context.Database);
        await Microsoft.EntityFrameworkCore.RelationalDatabaseFacadeExtensions.OpenConnectionAsync(context.Database);
        Assert.Equal("wal", Scalar(connection, "PRAGMA journal_mode"));
        // 2 is FULL.
        Assert.Equal(2L, Scalar(connection, "PRAGMA synchronous"));
        Assert.Equal(1L, Scalar(connection, "PRAGMA foreign_keys"));
        Assert.Equal(1L, Scalar(connection, "PRAGMA secure_delete"));
    }

    [Fact]
    public async Task Ids_InTheFile_AreTextInSmallLetters()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        var sample = new SampleSchool(number: 0xB);
        await sample.SaveToAsync(test.Store);
        await test.Store.AppendEntriesAsync(sample.Id, [sample.Trial(0xABC)]);
        await using var connection = new SqliteConnection($"Data Source={test.SqliteFile};Pooling=False");
        connection.Open();
        Assert.Equal(sample.Trial(0xABC).Id.ToString(), Scalar(connection, "SELECT id FROM entries"));
        Assert.Equal(0L, Scalar(connection, "SELECT COUNT(*) FROM entries WHERE typeof(school_id) <> 'text' OR school_id <> lower(school_id) OR pupil_id <> lower(pupil_id)"));
        Assert.Equal(sample.Trial(0xABC).MadeAt.UtcTicks, Scalar(connection, "SELECT made_at FROM entries"));
    }

    private static object? Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    private static void Run(string file, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        Scalar(connection, sql);
    }
}
