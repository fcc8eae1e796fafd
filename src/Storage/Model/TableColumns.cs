using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace Slantwise.Storage.Model;

/// <summary>A table as plain SQL needs it, read from the model so that the two cannot drift apart.</summary>
internal sealed class TableColumns
{
    private static readonly ConcurrentDictionary<IEntityType, TableColumns> Known = new();

    private TableColumns(IEntityType type)
    {
        Table = type.GetTableName()!;
        Columns = type.GetFlattenedProperties().Select(p => new TableColumn(p)).ToList();
        KeyNames = type.FindPrimaryKey()!.Properties.Select(p => p.GetColumnName()).ToList();
    }

    public string Table { get; }
    public IReadOnlyList<TableColumn> Columns { get; }
    public IReadOnlyList<string> KeyNames { get; }

    public string ColumnList => string.Join(", ", Columns.Select(c => c.Name));
    public string KeyList => string.Join(", ", KeyNames);

    public static TableColumns Of<TRow>(DbContext context) =>
        Known.GetOrAdd(context.Model.FindEntityType(typeof(TRow))!, type => new TableColumns(type));
}
