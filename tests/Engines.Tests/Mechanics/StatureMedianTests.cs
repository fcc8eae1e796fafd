using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class StatureMedianTests
{
    [Theory]
    // Source: [CDC2000] stature for age, P50, as reported in its tables to one decimal.
    [InlineData(6, Sex.Male, 115.4)]
    [InlineData(10, Sex.Female, 138.0)]
    [InlineData(14, Sex.Male, 163.8)]
    [InlineData(18, Sex.Female, 163.1)]
    public void OfCm_AtAnAge_MedianOfTheTable(int age, Sex sex, double medianCm) => Assert.Equal(medianCm, StatureMedian.OfCm(age, sex), .05);

    [Fact]
    public void OfCm_WithoutASex_MeanOfBoth() => Assert.Equal((138.6 + 138.0) / 2, StatureMedian.OfCm(10, null), 1e-9);

    [Theory]
    [InlineData(4)]
    [InlineData(21)]
    public void OfCm_OutsideTheTable_SaysWhatIsAllowed(int age) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StatureMedian.OfCm(age, null));
}
