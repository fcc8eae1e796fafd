namespace Slantwise.Records.Tests.Floor;

public sealed class ContractSchemaTests
{
    [Fact]
    public Task Text_OfTheContracts_IsWhatTheFloorIsBuiltFrom() => AgreedFile.HoldAsync("src/Floor/contracts.schema.json", ContractSchema.Text());
}
