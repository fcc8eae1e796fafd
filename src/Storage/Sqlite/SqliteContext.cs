using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Slantwise.Storage.Model;

namespace Slantwise.Storage.Sqlite;

/// <summary>The model on SQLite.</summary>
internal sealed class SqliteContext(DbContextOptions<SqliteContext> options) : SchoolContext(options)
{
    // SQLite's extended result codes.
    private const int ForeignKeyFailed = 787;
    private const int PrimaryKeyFailed = 1555;
    private const int UniqueFailed = 2067;

    public override Refusal? RefusalOf(DbException error) => (error as SqliteException)?.SqliteExtendedErrorCode switch
    {
        ForeignKeyFailed => new Refusal(true, error.Message),
        PrimaryKeyFailed or UniqueFailed => new Refusal(false, error.Message),
        _ => null,
    };

    // A writing transaction begins IMMEDIATE and holds the whole file: nothing more to hold.
    public override Task HoldAsync<TRow>(Guid schoolId, IReadOnlyCollection<Guid> ids, CancellationToken cancel) => Task.CompletedTask;

    public override async Task<IReadOnlySet<Guid>> AddNewAsync(IReadOnlyList<EntryRow> rows, CancellationToken cancel)
    {
        var added = new HashSet<Guid>();
        await using var writer = RowWriter<EntryRow>.Adding(this);
        foreach (var row in rows)
            if (await writer.WriteAsync(row, cancel)) added.Add(row.Id);
        return added;
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder conventions)
    {
        base.ConfigureConventions(conventions);
        // As text in small letters, the form every other tool writes; the driver's own form is in capitals.
        conventions.Properties<Guid>().HaveConversion<string>();
    }
}
