using CsCheck;
using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

public sealed class PortableMathTests
{
    // Both sides may be off by about one unit in the last place, 2.2e-16 relatively.
    private const double Tolerance = 1e-15;

    [Fact]
    public void Exp_AnyNumber_IsThePlatforms() =>
        Gen.Double[-700, 700].Sample(x => Math.Abs((PortableMath.Exp(x) / Math.Exp(x)) - 1) < Tolerance);

    [Fact]
    public void Log_AnyNumber_IsThePlatforms() =>
        Gen.Double[-300, 300].Select(exponent => Math.Pow(10, exponent))
            .Sample(x => Math.Abs(PortableMath.Log(x) - Math.Log(x)) <= Tolerance * Math.Max(1e-3, Math.Abs(Math.Log(x))));

    [Fact]
    public void Log_NearOne_LosesNoDigits() =>
        Gen.Double[-1e-3, 1e-3].Where(x => Math.Abs(x) > 1e-12)
            .Sample(x => Math.Abs((PortableMath.Log(1 + x) / Math.Log(1 + x)) - 1) < Tolerance);

    [Fact]
    public void Logistic_OfLogit_IsTheChance() =>
        Gen.Double[1e-9, 1 - 1e-9].Sample(p => Math.Abs(PortableMath.Logistic(PortableMath.Logit(p)) - p) < 1e-14);

    [Theory]
    [InlineData(-2000, 0)]
    [InlineData(0, 0.5)]
    [InlineData(2000, 1)]
    public void Logistic_FarOut_StaysAChance(double logits, double expected) => Assert.Equal(expected, PortableMath.Logistic(logits));
}
