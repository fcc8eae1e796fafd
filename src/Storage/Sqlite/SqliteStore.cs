using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Slantwise.Storage.Model;

namespace Slantwise.Storage.Sqlite;

/// <summary>Records in one file, in use by one machine: the default.</summary>
public sealed partial class SqliteStore : SchoolStore
{
    /// <summary>The number in the file's header that says the file is ours ("SltW" in ASCII).</summary>
    internal const int ApplicationId = 0x536C7457;

    internal const string HistoryTable = "schema_versions";

    private readonly string _file;
    private readonly string _connectionString;
    private readonly PooledDbContextFactory<SqliteContext> _contexts;
    // One writer at a time is SQLite's rule: waiting here costs no thread and has no time limit.
    private readonly SemaphoreSlim _writing = new(1);

    private SqliteStore(string file, TimeProvider clock) : base(clock)
    {
        _file = file;
        _connectionString = ConnectionStringOf(file);
        _contexts = new PooledDbContextFactory<SqliteContext>(OptionsFor(_connectionString), poolSize: 32);
    }

    /// <summary>Opens a file of records, made or brought up to date first where needed.</summary>
    /// <param name="file">The path; its folder is made where it is missing.</param>
    /// <param name="clock">Dates what the store receives and freezes.</param>
    /// <param name="cancel">Stops the opening.</param>
    /// <exception cref="InvalidDataException">The file holds something else, or was written by a newer version. It is left as it was.</exception>
    public static async Task<SqliteStore> OpenAsync(string file, TimeProvider clock, CancellationToken cancel = default)
    {
        var path = Path.GetFullPath(file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        OwnersFile.Make(path);
        var store = new SqliteStore(path, clock);
        try
        {
            SqliteFile.ClaimOrRefuse(store._connectionString, path);
            await SqliteMigration.RunAsync(path, cancel);
            return store;
        }
        catch
        {
            await store.DisposeAsync();
            throw;
        }
    }

    /// <inheritdoc/>
    public override ValueTask DisposeAsync()
    {
        using var connection = new SqliteConnection(_connectionString);
        SqliteConnection.ClearPool(connection);
        return ValueTask.CompletedTask;
    }

    internal static string ConnectionStringOf(string file) => new SqliteConnectionStringBuilder
    {
        DataSource = file,
        Mode = SqliteOpenMode.ReadWriteCreate,
        ForeignKeys = true,
        DefaultTimeout = 30,
    }.ToString();

    internal static DbContextOptions<SqliteContext> OptionsFor(string connectionString) =>
        new DbContextOptionsBuilder<SqliteContext>()
            .UseSqlite(connectionString, sqlite => sqlite.MigrationsHistoryTable(HistoryTable))
            .UseQueryTrackingBehavior(QueryTrackingBehavior.NoTracking)
            .AddInterceptors(Settings)
            .Options;

    private static ConnectionSettings Settings { get; } = new();

    private protected override async Task<SchoolContext> OpenContextAsync(CancellationToken cancel) => await _contexts.CreateDbContextAsync(cancel);

    private protected override async Task<IDisposable?> EnterWritingAsync(CancellationToken cancel)
    {
        await _writing.WaitAsync(cancel);
        return new Turn(_writing);
    }

    // The log may still hold pages from before the erasing: written back into the file and emptied.
    private protected override async Task ForgetErasedAsync(CancellationToken cancel)
    {
        using var turn = await EnterWritingAsync(cancel);
        await using var context = await OpenContextAsync(cancel);
        await context.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE)", cancel);
    }

    private sealed class Turn(SemaphoreSlim writing) : IDisposable
    {
        public void Dispose() => writing.Release();
    }
}
