using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Npgsql;
using Slantwise.Storage.Model;

namespace Slantwise.Storage.Postgres;

/// <summary>Records on a PostgreSQL server, for more than one machine.</summary>
public sealed partial class PostgresStore : SchoolStore
{
    internal const string HistoryTable = "schema_versions";

    private readonly string _connectionString;
    private readonly PooledDbContextFactory<PostgresContext> _contexts;

    private PostgresStore(string connectionString, TimeProvider clock) : base(clock)
    {
        _connectionString = connectionString;
        _contexts = new PooledDbContextFactory<PostgresContext>(OptionsFor(connectionString), poolSize: 32);
    }

    /// <summary>Opens a database of records, made or brought up to date first where needed.</summary>
    /// <param name="connectionString">Names the server, the database and the user, as Npgsql reads it.</param>
    /// <param name="clock">Dates what the store receives and freezes.</param>
    /// <param name="cancel">Stops the opening.</param>
    /// <exception cref="ArgumentException">The connection string names no database.</exception>
    /// <exception cref="InvalidDataException">The database was written by a newer version. It is left as it was.</exception>
    public static async Task<PostgresStore> OpenAsync(string connectionString, TimeProvider clock, CancellationToken cancel = default)
    {
        var settings = new NpgsqlConnectionStringBuilder(connectionString);
        if (string.IsNullOrEmpty(settings.Database))
            throw new ArgumentException("The connection string names no database: add 'Database=slantwise'.", nameof(connectionString));
        var store = new PostgresStore(connectionString, clock);
        try
        {
            await using var context = await store._contexts.CreateDbContextAsync(cancel);
            if (await context.Database.CanConnectAsync(cancel))
                SchemaSteps.RefuseUnknown(context, await context.Database.GetAppliedMigrationsAsync(cancel), $"The database {settings.Database}");
            await context.Database.MigrateAsync(cancel);
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
        using var connection = new NpgsqlConnection(_connectionString);
        NpgsqlConnection.ClearPool(connection);
        return ValueTask.CompletedTask;
    }

    internal static DbContextOptions<PostgresContext> OptionsFor(string connectionString) =>
        new DbContextOptionsBuilder<PostgresContext>()
            .UseNpgsql(connectionString, npgsql => npgsql.MigrationsHistoryTable(HistoryTable))
            .UseQueryTrackingBehavior(QueryTrackingBehavior.NoTracking)
            .Options;

    private protected override async Task<SchoolContext> OpenContextAsync(CancellationToken cancel) => await _contexts.CreateDbContextAsync(cancel);

    // The server lets writers of different rows write at once.
    private protected override Task<IDisposable?> EnterWritingAsync(CancellationToken cancel) => Task.FromResult<IDisposable?>(null);

    // Deleted rows are out of reach of every query at once; the server's own vacuum reuses their space.
    private protected override Task ForgetErasedAsync(CancellationToken cancel) => Task.CompletedTask;
}
