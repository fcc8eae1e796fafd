using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Slantwise.Records.Schools;

namespace Slantwise.Storage.Model;

/// <summary>Our names in the database: small letters and underscores, so that SQL by hand needs no quotes.</summary>
internal static partial class ColumnNames
{
    public static void Apply(IMutableModel model)
    {
        foreach (var table in model.GetEntityTypes())
        {
            var tableName = table.GetTableName()!;
            foreach (var column in table.GetProperties().Concat(table.GetComplexProperties().SelectMany(c => c.ComplexType.GetProperties())))
            {
                column.SetColumnName(IsSchoolsOwnId(column) ? "school_id" : Snake(column.Name));
                // Ids are made where the record is made; a database that fills one in would hide a mistake.
                column.ValueGenerated = ValueGenerated.Never;
            }
            foreach (var key in table.GetKeys()) key.SetName($"pk_{tableName}");
            foreach (var key in table.GetForeignKeys())
                key.SetConstraintName($"fk_{tableName}_{key.PrincipalEntityType.GetTableName()}");
            foreach (var index in table.GetIndexes())
                index.SetDatabaseName($"ix_{tableName}_{string.Join('_', index.Properties.Skip(1).Select(p => Snake(p.Name)).DefaultIfEmpty("school"))}");
        }
    }

    private static bool IsSchoolsOwnId(IMutableProperty column) =>
        column.DeclaringType.ClrType == typeof(School) && column.Name == nameof(School.Id);

    private static string Snake(string name) => Hump().Replace(name, "_").ToLowerInvariant();

    [GeneratedRegex("(?<=[a-z0-9])(?=[A-Z])")]
    private static partial Regex Hump();
}
