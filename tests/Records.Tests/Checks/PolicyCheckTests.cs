using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Checks;

public sealed class PolicyCheckTests
{
    private static readonly School Cautious = new() { Id = new Guid(1, 0, 0, new byte[8]), Name = "Brook School" };

    [Fact]
    public void Of_DefaultPolicy_SaysNothing() => Assert.Empty(PolicyCheck.Of(Cautious));

    [Theory]
    [InlineData(1, true)]
    [InlineData(60, true)]
    [InlineData(0, false)]
    [InlineData(61, false)]
    public void Of_HoldCapAtItsEnds_IsHeldToOneToSixty(int capS, bool isFine) =>
        Finds(Cautious with { Policy = new SafetyPolicy { HeadHoldCapS = capS } }, isFine ? [] : ["PolicyHeadHoldCap"]);

    [Theory]
    [InlineData(1, true)]
    [InlineData(365, true)]
    [InlineData(0, false)]
    [InlineData(366, false)]
    public void Of_ReturnDaysAtTheirEnds_AreHeldToAYear(int dayCount, bool isFine) =>
        Finds(Cautious with { Policy = new SafetyPolicy { ReturnSteps = [new(BodyDemand.Roll, 21), new(BodyDemand.Impact, dayCount)] } }, isFine ? [] : ["PolicyReturnDays"]);

    [Fact]
    public void Of_ADemandTwice_IsRefused() =>
        Finds(Cautious with { Policy = new SafetyPolicy { ReturnSteps = [new(BodyDemand.Roll, 21), new(BodyDemand.Roll, 28)] } }, ["PolicyReturnTwice"]);

    [Fact]
    public void Of_HeadWeightPlannedUnderNoCondition_IsRefusedAndFineWhereItIsNotAllowed()
    {
        Finds(Cautious with { Policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned, HeadConditions = [] } }, ["PolicyHeadWithoutCondition"]);
        Finds(Cautious with { Policy = new SafetyPolicy { HeadConditions = [] } }, []);
    }

    [Theory]
    [InlineData(1000, true)]
    [InlineData(1001, false)]
    public void Of_EmergencyNotesAtTheirEnd_AreHeldToAThousandCharacters(int length, bool isFine) =>
        Finds(Cautious with { EmergencyNotes = new string('x', length) }, isFine ? [] : ["EmergencyNotesTooLong"]);

    [Theory]
    [InlineData(0, "AdaptationEmpty")]
    [InlineData(120, null)]
    [InlineData(121, "AdaptationTooLong")]
    public void OfAdaptation_AtItsEnds_IsHeldToItsLength(int length, string? key)
    {
        var findings = AdaptationCheck.Of(new string('x', length));
        Assert.Equal(key is null ? [] : [key], findings.Select(f => f.Key));
        Sentences.AreWhole(findings);
    }

    private static void Finds(School school, string[] keys)
    {
        var findings = PolicyCheck.Of(school);
        Assert.Equal(keys, findings.Select(f => f.Key));
        Assert.All(findings, f => Assert.True(f.IsRefused));
        Sentences.AreWhole(findings);
    }
}
