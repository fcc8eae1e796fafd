using System.Globalization;
using Slantwise.Records.Halls;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tests.Halls;

public sealed class TaskFallTests
{
    [Theory]
    // By hand, from [CDC2000] as the engine holds it: boys of 10 138.6 cm, girls of 12 151.2 cm, boys of 17 175.3 cm; a tenth more, rounded up.
    [InlineData(10, 1.53)]
    [InlineData(12, 1.67)]
    [InlineData(17, 1.93)]
    [InlineData(null, 1.80)]
    public void Stature_OfAnAge_IsTheTallerMedianAndATenth(int? age, double expectedM) => Assert.Equal(expectedM, FallStature.OfM(age), 1e-9);

    [Theory]
    [InlineData(4)]
    [InlineData(19)]
    public void Stature_OutsideOfSchool_IsRefused(int age) => Assert.Throws<ArgumentOutOfRangeException>(() => FallStature.OfM(age));

    [Fact]
    public void Of_PostureAgainstClearSpace_TakesTheWider()
    {
        // By hand: on two feet a body is as high as it is tall, 1.4 m; its design keeps 1 m free. Where it keeps 2 m, those count.
        var design = TaskLibrary.Designs[0] with { Space = new(1, ClearSpace.CommonPractice) };
        var posture = TaskFall.Of(Task("two-feet"), design, 1.4);
        Assert.Equal(FallGround.Posture, posture.Ground);
        Assert.Equal(1.4, posture.RadiusM, 0.02);
        Assert.Equal((2.0, FallGround.ClearSpace), Said(TaskFall.Of(Task("two-feet"), design with { Space = new(2, ClearSpace.CommonPractice) }, 1.4)));
        Assert.Equal((1.0, FallGround.ClearSpace), Said(TaskFall.Of(Task([null]), design, 1.4)));
        Assert.Equal((1.4, FallGround.Standing), Said(TaskFall.Of(Task([null]), null, 1.4)));
        Assert.Equal((1.4, FallGround.Standing), Said(TaskFall.Of(Task("no-such-posture"), null, 1.4)));
    }

    [Fact]
    public void Of_TheHighestLevel_Counts()
    {
        var low = TaskFall.Of(Task("v-sit"), null, 1.5);
        var both = TaskFall.Of(Task("v-sit", "star-stand"), null, 1.5);
        Assert.True(both.RadiusM > low.RadiusM);
        Assert.Equal(TaskFall.Of(Task("star-stand"), null, 1.5).RadiusM, both.RadiusM);
    }

    [Fact]
    public void Of_EveryTaskOfTheLibrary_IsNeverLessThanItsClearSpaceAndSaidInBothLanguages()
    {
        foreach (var design in TaskLibrary.Designs)
        {
            var task = SheetTask.Of(design.ToTask("en", Guid.Empty), design.ToTask("en", Guid.Empty).Levels);
            var fall = TaskFall.Of(task, design, FallStature.OfM(18));
            Assert.InRange(fall.RadiusM, (double)design.Space.SpaceM, 10);
            Assert.NotEqual(FallGround.Standing, fall.Ground);
            foreach (var culture in new[] { "en", "es" })
                Assert.Contains(task.Name, StationWording.Of(fall, CultureInfo.GetCultureInfo(culture)));
        }
    }

    private static (double, FallGround) Said(TaskFall fall) => (fall.RadiusM, fall.Ground);

    private static SheetTask Task(params string?[] postures) => new()
    {
        TaskId = Guid.Empty, Name = "t",
        Levels = [.. postures.Select(p => new Level { Id = Guid.Empty, Name = "l", Dose = new(DoseKind.HoldS, 5), Posture = p })],
    };
}
