using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql;
using Slantwise.Storage;
using Slantwise.Storage.Model;
using Slantwise.Storage.Postgres;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Records.Tests.Stores;

/// <summary>An empty store of one test on one database, and a folder for its files; both gone when the test ends.</summary>
internal sealed class TestStore : IAsyncDisposable
{
    private const string ServerVariable = "SLANTWISE_TEST_POSTGRES";

    private readonly List<SchoolStore> _opened = [];
    private readonly string? _connectionString;

    private TestStore(Database database, string? connectionString)
    {
        Database = database;
        _connectionString = connectionString;
        Folder = Directory.CreateTempSubdirectory("slantwise-store-").FullName;
    }

    public Database Database { get; }
    public string Folder { get; }
    public ManualClock Clock { get; } = new();
    public SchoolStore Store => _opened[0];
    public string SqliteFile => Path.Combine(Folder, "slantwise.db");
    public string PostgresConnectionString => _connectionString!;

    public static async Task<TestStore> OpenAsync(Database database)
    {
        var test = new TestStore(database, database is Database.Postgres ? await NewDatabaseAsync() : null);
        await test.OpenAgainAsync();
        return test;
    }

    /// <summary>The same, with one of everything of a small school in it.</summary>
    public static async Task<(TestStore Test, SampleSchool Sample)> OpenSampleAsync(Database database)
    {
        var test = await OpenAsync(database);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        return (test, sample);
    }

    /// <summary>Takes the tables back to a step, as a program of that time left them.</summary>
    /// <returns>The later steps, which opening again takes.</returns>
    public async Task<IEnumerable<string>> GoBackToAsync(string step)
    {
        await using var context = Database is Database.Sqlite
            ? (SchoolContext)new SqliteContext(SqliteStore.OptionsFor(SqliteStore.ConnectionStringOf(SqliteFile)))
            : new PostgresContext(PostgresStore.OptionsFor(PostgresConnectionString));
        await context.GetService<IMigrator>().MigrateAsync(step, TestContext.Current.CancellationToken);
        return await context.Database.GetPendingMigrationsAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Another store on the same data, as another program of the same machine would open it.</summary>
    public async Task<SchoolStore> OpenAgainAsync()
    {
        SchoolStore store = Database is Database.Sqlite
            ? await SqliteStore.OpenAsync(SqliteFile, Clock, TestContext.Current.CancellationToken)
            : await PostgresStore.OpenAsync(_connectionString!, Clock, TestContext.Current.CancellationToken);
        _opened.Add(store);
        return store;
    }

    public string PathOf(string name) => Path.Combine(Folder, name);

    public async ValueTask DisposeAsync()
    {
        foreach (var store in _opened) await store.DisposeAsync();
        if (_connectionString is not null) await RunOnServerAsync($"DROP DATABASE IF EXISTS {new NpgsqlConnectionStringBuilder(_connectionString).Database} WITH (FORCE)");
        Directory.Delete(Folder, recursive: true);
    }

    private static async Task<string> NewDatabaseAsync()
    {
        var name = $"slantwise_test_{Guid.CreateVersion7():N}";
        await RunOnServerAsync($"CREATE DATABASE {name}");
        return new NpgsqlConnectionStringBuilder(Server()) { Database = name, MaxPoolSize = 20 }.ToString();
    }

    private static string Server()
    {
        var server = Environment.GetEnvironmentVariable(ServerVariable);
        if (string.IsNullOrWhiteSpace(server))
            Assert.Skip($"{ServerVariable} is not set: it names a PostgreSQL server on which databases may be made.");
        return server!;
    }

    private static async Task RunOnServerAsync(string sql)
    {
        await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(Server()) { Database = "postgres", Pooling = false }.ToString());
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }
}
