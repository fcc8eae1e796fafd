using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Slantwise.Records.Entries;
using Slantwise.Storage.Postgres;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Records.Tests.Stores;

/// <summary>
/// Every place where words about a pupil can be kept is named here, so that a new one is noticed and asked whether a diagnosis or a reason could end up in it.
/// A restriction has none.
/// </summary>
public sealed class PupilTextTests
{
    private static readonly string[] Known =
    [
        "adaptations.text", // How a task is done, in pupil words: printed on the pupil's own sheet, so the pupil reads it.
        "entries.device_id",
        "entries.remark", // A pupil's reason for the next level, the teacher's note, the note of a talk.
        "floor_devices.device_id",
        "floor_devices.name",
        "incidents.changed", // What happened on a day and what was done. Whom it was about is a list of ids beside it.
        "incidents.done",
        "incidents.happened",
        "incidents.place",
        "pictures.field_key",
        "pupils.code",
        "pupils.display_name",
        "pupils.roster_key",
        "scans.content", // What was read from a page, until somebody has looked at it.
    ];

    [Theory, EachDatabase]
    public void Texts_OfTablesThatNameAPupil_AreTheseAndNoOthers(Database database) => Assert.Equal(Known, TextsOf(database));

    [Theory, EachDatabase]
    public void Texts_OfRestrictions_AreNone(Database database) => Assert.DoesNotContain(TextsOf(database), text => text.StartsWith("restrictions", StringComparison.Ordinal));

    [Fact]
    public void Texts_OfASampleWithTexts_AreFound() => Assert.Equal(["Inner.Reason", "Inner.Words"], Within(typeof(Outer), []).Order(StringComparer.Ordinal));

    private static List<string> TextsOf(Database database)
    {
        using DbContext context = database is Database.Sqlite ? new SqliteContextFactory().CreateDbContext([]) : new PostgresContextFactory().CreateDbContext([]);
        return
        [
            .. context.Model.GetEntityTypes().Where(IsAboutAPupil)
                .SelectMany(table => table.GetFlattenedProperties().SelectMany(p => TextsOf(p).Select(text => $"{table.GetTableName()}.{p.GetColumnName()}{text}")))
                .Order(StringComparer.Ordinal),
        ];
    }

    // By a column that names one or several, or by a list of them within a column.
    private static bool IsAboutAPupil(IEntityType table) => table.GetTableName() == "pupils"
        || table.GetFlattenedProperties().Any(p => p.GetColumnName().Contains("pupil", StringComparison.Ordinal) || NamesPupils(p.ClrType, []));

    private static bool NamesPupils(Type type, HashSet<Type> seen) => Parts(type, seen).Any(p => (p.Name.Contains("Pupil", StringComparison.Ordinal) && IsId(p.PropertyType)) || NamesPupils(p.PropertyType, seen));

    private static IEnumerable<string> TextsOf(IProperty column) =>
        column.ClrType == typeof(string) || IsListOfText(column.ClrType) ? [""] : Within(column.ClrType, []).Select(text => $" {text}");

    private static IEnumerable<string> Within(Type type, HashSet<Type> seen) => Parts(type, seen).SelectMany(p =>
        p.PropertyType == typeof(string) || IsListOfText(p.PropertyType) ? [$"{p.DeclaringType!.Name}.{p.Name}"] : Within(p.PropertyType, seen));

    private static bool IsId(Type type) => type == typeof(Guid) || type == typeof(Guid?) || typeof(IEnumerable<Guid>).IsAssignableFrom(type);

    private static bool IsListOfText(Type type) => typeof(IEnumerable<string>).IsAssignableFrom(type);

    // What a value is made of: the properties of our own types, of those a list holds, and of every kind of fact.
    private static IEnumerable<PropertyInfo> Parts(Type type, HashSet<Type> seen)
    {
        var own = type.IsArray ? [type.GetElementType()!] : type.IsGenericType ? type.GetGenericArguments() : [type];
        return own.SelectMany(t => t == typeof(EntryFact) ? typeof(EntryFact).Assembly.GetTypes().Where(t.IsAssignableFrom) : [t])
            .Where(t => !t.IsEnum && t.Namespace?.StartsWith("Slantwise", StringComparison.Ordinal) == true && seen.Add(t))
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance)).ToList();
    }

    private sealed record Outer(Guid PupilId, IReadOnlyList<Inner> Parts);

    private sealed record Inner(string Words, IReadOnlyList<string> Reason, int Count);
}
