using Microsoft.EntityFrameworkCore.Design;

namespace Slantwise.Storage.Postgres;

/// <summary>Lets the migrations tool see the model without a database.</summary>
internal sealed class PostgresContextFactory : IDesignTimeDbContextFactory<PostgresContext>
{
    public PostgresContext CreateDbContext(string[] args) => new(PostgresStore.OptionsFor("Host=localhost;Database=design_time"));
}
