using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;
using Slantwise.Storage.Model;

namespace Slantwise.Storage.Postgres;

/// <summary>The model on PostgreSQL.</summary>
internal sealed class PostgresContext(DbContextOptions<PostgresContext> options) : SchoolContext(options)
{
    public override Refusal? RefusalOf(DbException error) => (error as PostgresException)?.SqlState switch
    {
        PostgresErrorCodes.ForeignKeyViolation => new Refusal(true, ((PostgresException)error).ConstraintName ?? ""),
        PostgresErrorCodes.UniqueViolation => new Refusal(false, ((PostgresException)error).ConstraintName ?? ""),
        _ => null,
    };

    // In the order of the ids: two writers that hold the same rows never wait for each other in a circle.
    public override async Task HoldAsync<TRow>(Guid schoolId, IReadOnlyCollection<Guid> ids, CancellationToken cancel)
    {
        await using var command = Command($"SELECT id FROM {TableColumns.Of<TRow>(this).Table} WHERE school_id = @school AND id = ANY(@ids) ORDER BY id FOR UPDATE");
        command.Parameters.Add(new NpgsqlParameter("school", schoolId));
        command.Parameters.Add(new NpgsqlParameter("ids", ids.ToArray()));
        await command.ExecuteNonQueryAsync(cancel);
    }

    // One array a column, unnested into rows: a whole batch is one statement and one round trip.
    public override async Task<IReadOnlySet<Guid>> AddNewAsync(IReadOnlyList<EntryRow> rows, CancellationToken cancel)
    {
        var table = TableColumns.Of<EntryRow>(this);
        await using var command = Command(
            $"INSERT INTO {table.Table} ({table.ColumnList}) SELECT * FROM unnest({string.Join(", ", table.Columns.Select(c => "@" + c.Name))}) "
            + $"ON CONFLICT ({table.KeyList}) DO NOTHING RETURNING id");
        foreach (var column in table.Columns)
            command.Parameters.Add(new NpgsqlParameter(column.Name, ArrayOf(column, rows)) { DataTypeName = column.Mapping.StoreType + "[]" });
        try
        {
            var added = new HashSet<Guid>();
            await using var reader = await command.ExecuteReaderAsync(cancel);
            while (await reader.ReadAsync(cancel)) added.Add(reader.GetGuid(0));
            return added;
        }
        catch (PostgresException error) when (RefusalOf(error) is { } refusal)
        {
            throw new ArgumentException(refusal.Sentence(table.Table), error);
        }
    }

    private NpgsqlCommand Command(string sql) => new(
        sql, (NpgsqlConnection)Database.GetDbConnection(), (NpgsqlTransaction)Database.CurrentTransaction!.GetDbTransaction());

    private static Array ArrayOf(TableColumn column, IReadOnlyList<EntryRow> rows)
    {
        var type = column.Mapping.Converter?.ProviderClrType ?? column.Mapping.ClrType;
        if (type.IsEnum) type = typeof(int);
        if (type.IsValueType && Nullable.GetUnderlyingType(type) is null) type = typeof(Nullable<>).MakeGenericType(type);
        var values = Array.CreateInstance(type, rows.Count);
        for (var i = 0; i < rows.Count; i++) values.SetValue(column.ValueOf(rows[i]), i);
        return values;
    }
}
