using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Slantwise.Storage.Sqlite;

/// <summary>Lets the migrations tool see the model without a database.</summary>
internal sealed class SqliteContextFactory : IDesignTimeDbContextFactory<SqliteContext>
{
    public SqliteContext CreateDbContext(string[] args) => new(SqliteStore.OptionsFor("Data Source=design-time.db"));
}
