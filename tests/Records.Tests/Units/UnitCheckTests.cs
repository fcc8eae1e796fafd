using Slantwise.Records.Schools;
using Slantwise.Records.Tests.Evidence;
using Slantwise.Records.Units;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Units;

public sealed class UnitCheckTests
{
    private static readonly SchoolClass Taught = new() { SchoolId = LessonBuilder.SchoolId, Id = LessonBuilder.ClassId, Name = "7B" };

    [Fact]
    public void Of_UnitWithinItsLimits_SaysNothing() => Assert.Empty(Keys(Unit(new() { Outcomes = [Still, Soft], Lessons = [Of(null, Task(1, Still))] })));

    [Fact]
    public void Of_EverythingBeyondItsLimit_IsRefusedOneByOne()
    {
        static string Long(int length) => new('w', length);
        var lesson = new PlannedUnitLesson(Long(81), null, [.. Enumerable.Range(1, 7).Select(i => Task(i))], [.. Enumerable.Repeat(Long(161), 6)]);
        var unit = Unit(new()
        {
            Outcomes = [new(Guid.NewGuid(), Long(41), Long(501), Long(121)), new(Guid.NewGuid(), "", "", "F"), .. Enumerable.Repeat(Still, 59)],
            Lessons = [lesson, .. Enumerable.Repeat(Of(null), 40)],
            Notes = Long(2001),
        }) with
        { Name = Long(81) };
        Assert.Equal(
            ["OutcomeCodeTooLong", "OutcomeEmpty", "OutcomeFrameworkTooLong", "OutcomeTextTooLong", "UnitLessonAimCount", "UnitLessonAimTooLong", "UnitLessonCount", "UnitLessonTaskCount",
                "UnitLessonTitleTooLong", "UnitNameTooLong", "UnitNotesTooLong", "UnitOutcomeCount"],
            Keys(unit).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(["UnitNameEmpty"], Keys(unit with { Name = " ", Content = new() }));
        Assert.Equal(["UnitClassUnknown"], UnitCheck.Of(Unit(new()), []).Select(f => f.Key));
    }

    private static IEnumerable<string> Keys(TeachingUnit unit) => UnitCheck.Of(unit, [Taught]).Select(f => f.Key);
}
