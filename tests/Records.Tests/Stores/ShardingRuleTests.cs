using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Slantwise.Storage.Model;
using Slantwise.Storage.Postgres;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Records.Tests.Stores;

/// <summary>A distributed store could spread the tables by school unchanged: every row finds all it needs within its school.</summary>
public sealed class ShardingRuleTests
{
    [Theory, EachDatabase]
    public void Tables_OfTheModel_HaveTheSchoolFirstInTheirKey(Database database)
    {
        var tables = TablesOf(database);
        Assert.Equal(24, tables.Count);
        Assert.All(tables, t => Assert.Equal("school_id", t.FindPrimaryKey()!.Properties[0].GetColumnName()));
        Assert.All(tables.SelectMany(t => t.GetKeys()), k => Assert.Equal("school_id", k.Properties[0].GetColumnName()));
    }

    [Theory, EachDatabase]
    public void ForeignKeys_OfTheModel_StayWithinTheSchool(Database database)
    {
        var keys = TablesOf(database).SelectMany(t => t.GetForeignKeys()).ToList();
        Assert.NotEmpty(keys);
        Assert.All(keys, key =>
        {
            // The same column on both sides, in the same place: a key that pairs the school with something else would cross schools.
            Assert.Equal("school_id", key.Properties[0].GetColumnName());
            Assert.Equal("school_id", key.PrincipalKey.Properties[0].GetColumnName());
        });
        // Every table but the schools' own belongs to something.
        Assert.Equal(
            TablesOf(database).Select(t => t.GetTableName()).Except(["schools"]).Order(),
            keys.Select(k => k.DeclaringEntityType.GetTableName()).Distinct().Order());
    }

    [Theory, EachDatabase]
    public void Indexes_OfTheModel_BeginWithTheSchool(Database database)
    {
        var indexes = TablesOf(database).SelectMany(t => t.GetIndexes()).ToList();
        Assert.Contains(indexes, i => i.IsUnique);
        Assert.All(indexes, i => Assert.Equal("school_id", i.Properties[0].GetColumnName()));
    }

    [Theory, EachDatabase]
    public void Names_OfTablesAndColumns_NeedNoQuotes(Database database) => Assert.All(
        TablesOf(database).SelectMany(t => t.GetFlattenedProperties().Select(p => p.GetColumnName()).Append(t.GetTableName()!)),
        name => Assert.Matches("^[a-z]+(_[a-z]+)*$", name));

    [Theory, EachDatabase]
    public void Migrations_Model_NoPendingChanges(Database database)
    {
        using var context = ContextOf(database);
        Assert.False(context.Database.HasPendingModelChanges(), "The model changed: add a migration for both databases.");
        Assert.NotEmpty(context.Database.GetMigrations());
    }

    private static List<IEntityType> TablesOf(Database database)
    {
        using var context = ContextOf(database);
        return context.Model.GetEntityTypes().ToList();
    }

    private static SchoolContext ContextOf(Database database) => database is Database.Sqlite
        ? new SqliteContextFactory().CreateDbContext([])
        : new PostgresContextFactory().CreateDbContext([]);
}
