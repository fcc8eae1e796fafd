using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace Slantwise.Storage.Model;

/// <summary>A column, and how a row's value for it looks in the database.</summary>
internal sealed class TableColumn(IProperty property)
{
    public string Name { get; } = property.GetColumnName();
    public RelationalTypeMapping Mapping { get; } = property.GetRelationalTypeMapping();

    /// <summary>The row's value as the database takes it; none for no value.</summary>
    public object? ValueOf(object row)
    {
        var value = property.GetGetter().GetClrValueUsingContainingEntity(row);
        if (value is Enum) value = Convert.ToInt32(value);
        else if (value is not null && Mapping.Converter is { } converter) value = converter.ConvertToProvider(value);
        return StoredValue.Checked(value, Name);
    }
}
