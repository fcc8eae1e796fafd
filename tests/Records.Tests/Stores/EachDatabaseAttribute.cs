using System.Reflection;
using Xunit.Sdk;
using Xunit.v3;

namespace Slantwise.Records.Tests.Stores;

/// <summary>Runs a theory once on each database.</summary>
public sealed class EachDatabaseAttribute : DataAttribute
{
    public override ValueTask<IReadOnlyCollection<ITheoryDataRow>> GetData(MethodInfo testMethod, DisposalTracker disposalTracker) =>
        ValueTask.FromResult<IReadOnlyCollection<ITheoryDataRow>>([new TheoryDataRow<Database>(Database.Sqlite), new TheoryDataRow<Database>(Database.Postgres)]);

    public override bool SupportsDiscoveryEnumeration() => true;
}
