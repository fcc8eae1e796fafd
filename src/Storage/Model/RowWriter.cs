using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Slantwise.Storage.Model;

/// <summary>One prepared INSERT for many rows, within the context's current transaction.</summary>
/// <remarks>Adding or replacing in one statement leaves no moment between looking and writing in which another writer can slip in.</remarks>
internal sealed class RowWriter<TRow> : IAsyncDisposable where TRow : class
{
    private readonly SchoolContext _context;
    private readonly TableColumns _columns;
    private readonly DbCommand _command;

    private RowWriter(SchoolContext context, Func<TableColumns, string> onConflict)
    {
        _context = context;
        _columns = TableColumns.Of<TRow>(context);
        _command = context.Database.GetDbConnection().CreateCommand();
        _command.Transaction = context.Database.CurrentTransaction!.GetDbTransaction();
        _command.CommandText = $"INSERT INTO {_columns.Table} ({_columns.ColumnList}) "
            + $"VALUES ({string.Join(", ", _columns.Columns.Select(c => "@" + c.Name))}) "
            + $"ON CONFLICT ({_columns.KeyList}) {onConflict(_columns)}";
        foreach (var column in _columns.Columns)
            _command.Parameters.Add(column.Mapping.CreateParameter(_command, "@" + column.Name, null, nullable: true));
    }

    /// <summary>A row whose key is here already is left as it is.</summary>
    public static RowWriter<TRow> Adding(SchoolContext context) => new(context, _ => "DO NOTHING");

    /// <summary>A row whose key is here already takes the new values, except in the columns kept.</summary>
    public static RowWriter<TRow> Replacing(SchoolContext context, params string[] kept) => new(context, columns =>
        "DO UPDATE SET " + string.Join(", ", columns.Columns.Select(c => c.Name).Except(columns.KeyNames).Except(kept).Select(c => $"{c} = excluded.{c}")));

    /// <summary>Writes one row.</summary>
    /// <returns>Whether the table changed.</returns>
    /// <exception cref="ArgumentException">A parent that is not here; a value that must be unique and is not; a value no database can keep.</exception>
    public async Task<bool> WriteAsync(TRow row, CancellationToken cancel)
    {
        for (var i = 0; i < _columns.Columns.Count; i++)
            _command.Parameters[i].Value = _columns.Columns[i].ValueOf(row) ?? DBNull.Value;
        try
        {
            return await _command.ExecuteNonQueryAsync(cancel) > 0;
        }
        catch (DbException error) when (_context.RefusalOf(error) is { } refusal)
        {
            throw new ArgumentException(refusal.Sentence(_columns.Table), error);
        }
    }

    public ValueTask DisposeAsync() => _command.DisposeAsync();
}
