using CsCheck;
using Slantwise.Records.Units;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Units;

public sealed class UnitCalendarTests
{
    [Theory]
    // By hand, from a calendar: 8 March 2027 is a Monday.
    [InlineData(null, "2027-03-08", "2027-03-15")]
    [InlineData(DayOfWeek.Monday, "2027-03-08", "2027-03-15")]
    [InlineData(DayOfWeek.Thursday, "2027-03-11", "2027-03-18")]
    [InlineData(DayOfWeek.Sunday, "2027-03-14", "2027-03-21")]
    public void Days_FromAMonday_AreAWeekApart(DayOfWeek? weekday, string first, string second) =>
        Assert.Equal([DateOnly.Parse(first), DateOnly.Parse(second)], UnitCalendar.Days(new DateOnly(2027, 3, 8), weekday, 2));

    [Fact]
    public void Days_AnyStart_AreThatDayWithinSixDays() => Gen.Select(Gen.Int[0, 4000], Gen.Enum<DayOfWeek>(), Gen.Int[0, 40]).Sample((day, weekday, count) =>
    {
        var first = new DateOnly(2024, 1, 1).AddDays(day);
        var days = UnitCalendar.Days(first, weekday, count);
        Assert.Equal(count, days.Count);
        Assert.All(days, d => Assert.Equal(weekday, d.DayOfWeek));
        if (count > 0) Assert.InRange(days[0].DayNumber - first.DayNumber, 0, 6);
    });

    [Fact]
    public void Fill_OneLessonTiedAlready_MakesTheOthersInTheirWeeks()
    {
        var tied = Guid.NewGuid();
        var unit = Unit(new() { Lessons = [Of(null, Task(1)) with { Title = "A" }, Of(null) with { LessonId = tied }, Of(null) with { Title = "C" }] });
        var ids = new Queue<Guid>([Guid.NewGuid(), Guid.NewGuid()]);
        var expected = ids.ToList();
        var (filled, made) = UnitCalendar.Fill(unit, new DateOnly(2027, 3, 8), null, ids.Dequeue);
        Assert.Equal([expected[0], tied, expected[1]], filled.Content.Lessons.Select(l => l.LessonId!.Value));
        Assert.Equal([("A", new DateOnly(2027, 3, 8)), ("C", new DateOnly(2027, 3, 22))], made.Select(l => (l.Title, l.Date)));
        Assert.All(made, l => Assert.Equal((unit.ClassId, unit.SchoolId, (Guid?)null, "Aim one"), (l.ClassId, l.SchoolId, l.SheetId, l.Aims[0])));
        // A second time there is nothing to make.
        Assert.Empty(UnitCalendar.Fill(filled, new DateOnly(2027, 3, 8), null, Guid.NewGuid).Lessons);
    }
}
