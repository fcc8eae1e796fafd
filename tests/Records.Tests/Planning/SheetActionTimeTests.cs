using Slantwise.Records.Planning;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Planning;

public sealed class SheetActionTimeTests
{
    // By hand: holds of 5, 10 and 15 s are 10 on the mean; 10 repetitions of 1.5 s are 15, a throw is 8: 11.5; the mean of both tasks is 10.75.
    [Fact]
    public void MeanS_OfTwoTasks_CountsEachAlike()
    {
        var sheet = PlannedLesson.Sheet(1, 5,
            [new(DoseKind.HoldS, 5), new(DoseKind.HoldS, 10), new(DoseKind.HoldS, 15)], [new(DoseKind.RepetitionsCount, 10), new(DoseKind.TargetSizeM, 0.5m)]);
        Assert.Equal(10.75, SheetActionTime.MeanS(sheet)!.Value, 1e-9);
    }

    [Fact]
    public void MeanS_OfNoLevel_IsNone() => Assert.Null(SheetActionTime.MeanS(PlannedLesson.Sheet() with { Tasks = [] }));

    [Theory]
    [InlineData(DoseKind.HoldS, 100000, 600)]
    [InlineData(DoseKind.RepetitionsCount, 100000, 600)]
    [InlineData(DoseKind.HoldS, 0.01, 0.5)]
    public void OfS_OfAnOddDose_StaysWithinItsBounds(DoseKind kind, double amount, double expectedS) =>
        Assert.Equal(expectedS, SheetActionTime.OfS(new Dose(kind, (decimal)amount)), 1e-9);
}
