using Slantwise.Records.Entries;
using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

public sealed class DemoSchoolTests
{
    // A Wednesday.
    private static readonly DateOnly Today = new(2026, 3, 11);
    private static readonly DemoSchool Demo = DemoSchool.Of(1, Today);

    [Fact]
    public void Of_AnySeed_TwoClassesOf28And30() => Assert.Equal(
        [28, 30], Demo.Classes.Select(c => Demo.Enrolments.Count(e => e.ClassId == c.Id && e.IsCurrent)));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Of_AnySeed_LabelsAndCodesAreUnlike(ulong seed)
    {
        var demo = DemoSchool.Of(seed, Today);
        var pupils = demo.Pupils.ToDictionary(p => p.Id);
        Assert.Equal(58, demo.Pupils.DistinctBy(p => p.Code).Count());
        foreach (var group in demo.Enrolments.GroupBy(e => e.ClassId))
        {
            var labels = group.Select(e => pupils[e.PupilId].Label).ToList();
            Assert.Equal(labels.Count, labels.Distinct(StringComparer.OrdinalIgnoreCase).Count());
            Assert.Equal(labels.Order(StringComparer.Ordinal), labels);
        }
    }

    [Theory]
    [InlineData("2026-03-11", "2026-03-11", "2026-03-12")]
    [InlineData("2026-03-13", "2026-03-13", "2026-03-16")] // a Friday
    [InlineData("2026-03-14", "2026-03-16", "2026-03-17")] // a Saturday
    [InlineData("2026-03-15", "2026-03-16", "2026-03-17")] // a Sunday
    public void Of_AnyDay_FiveLessonsAClassAndTheLastStillToCome(string today, string first, string second)
    {
        var demo = DemoSchool.Of(1, DateOnly.Parse(today));
        foreach (var (group, last) in demo.Classes.Zip([DateOnly.Parse(first), DateOnly.Parse(second)]))
        {
            var lessons = demo.Lessons.Where(l => l.ClassId == group.Id).ToList();
            Assert.Equal(Enumerable.Range(-4, 5).Select(week => last.AddDays(7 * week)), lessons.Select(l => l.Date));
            Assert.All(lessons, l => Assert.NotNull(l.SheetId));
            Assert.Equal([true, true, true, true, false], lessons.Select(l => l.SheetVersion is not null));
            Assert.DoesNotContain(demo.Entries, e => e.LessonId == lessons[4].Id);
            Assert.All(lessons.Take(4), l => Assert.Contains(demo.Entries, e => e.LessonId == l.Id && e.Fact is Trial));
        }
    }

    [Fact]
    public void Of_FourthLessonOfTheFirstClass_HalfIsTyped()
    {
        var fourth = Demo.Lessons[3];
        var typed = Demo.Entries.Where(e => e.LessonId == fourth.Id && e.Fact is Choice).Select(e => e.PupilId).Distinct().Count();
        Assert.InRange(typed, 10, 14);
        Assert.Equal(28, Demo.Entries.Count(e => e.LessonId == fourth.Id && e.Fact is Presence));
    }

    [Fact]
    public void Of_OtherDay_SameSchoolPupilsSheetsAndLessonsByIdButOtherDates()
    {
        var later = DemoSchool.Of(1, Today.AddDays(40));
        Assert.Equal(Demo.School, later.School);
        Assert.Equal(Demo.Pupils, later.Pupils);
        Assert.Equal(Demo.Lessons.Select(l => l.Id), later.Lessons.Select(l => l.Id));
        Assert.NotEqual(Demo.Lessons.Select(l => l.Date), later.Lessons.Select(l => l.Date));
    }

    [Fact]
    public void Of_Restrictions_SomeHoldTodayAndOneNoLonger()
    {
        Assert.Equal(4, Demo.Restrictions.Count);
        Assert.Single(Demo.Restrictions, r => !r.HoldsOn(Today));
        Assert.Equal(4, Demo.Restrictions.Select(r => r.PupilId).Distinct().Count());
    }

    [Fact]
    public void Of_Entries_HaveAHandfulOfVisitsAndChecks()
    {
        Assert.InRange(Demo.Entries.Count(e => e.Fact is Visit), 10, 70);
        Assert.InRange(Demo.Entries.Count(e => e.Fact is TeacherCheck), 10, 70);
    }

    [Fact]
    public void Of_Sheets_OneHasTwoVersionsAndTheLastNoneYet() => Assert.Equal([1, 2, 1, 1, 0], Demo.Sheets.Select(s => s.LatestVersion));
}
