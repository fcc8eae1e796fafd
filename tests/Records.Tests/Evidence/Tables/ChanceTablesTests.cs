using Slantwise.Records.Evidence.Tables;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Evidence.Tables;

public sealed class ChanceTablesTests
{
    [Fact]
    public void LevelChances_AClass_OneRowALevelInTheOrderOfTheSheet()
    {
        var table = EvidenceTables.Of("level-chances", [Lesson().Record()])!;
        Assert.Equal([1, 2], table.Rows.Select(r => r[Column(table, "level")]));
        Assert.Equal([15, 0], table.Rows.Select(r => r[Column(table, "tries")]));
        Assert.Equal([2, 1], table.Rows.Select(r => r[Column(table, "offered_pupils")]));
        // Nobody tried the second level.
        Assert.Equal(true, table.Rows[1][Column(table, "mostly_assumed")]);
    }

    [Fact]
    public void PupilChances_NotOffered_HasNoChanceAndTooWideHasNoNumber()
    {
        var table = EvidenceTables.Of("pupil-chances", [Lesson().Record()])!;
        Assert.Equal(["Ann", "Ann", "Ben", "Ben"], table.Rows.Select(r => r[0]));
        var ben = table.Rows[3];
        Assert.Equal(false, ben[Column(table, "offered")]);
        Assert.Null(ben[Column(table, "chance_fraction")]);
        Assert.Null(ben[Column(table, "low_fraction")]);
        foreach (var row in table.Rows)
        {
            var (low, high) = ((double?)row[Column(table, "low_fraction")], (double?)row[Column(table, "high_fraction")]);
            Assert.Equal(high - low <= .5, row[Column(table, "chance_fraction")] is not null);
        }
    }

    private static int Column(EvidenceTable table, string heading) => table.Headings.ToList().IndexOf(heading);

    private static LessonBuilder Lesson()
    {
        var lesson = new LessonBuilder().Pupils("Ben", "Ann").Task(1, "Frog", ["a"], (1, 3, null), (2, 5, BodyDemand.HandWeight)).Restrict("Ben", BodyDemand.HandWeight);
        for (var set = 1; set <= 3; set++) lesson.Set("Ann", set, level: 1, tries: "1 1 1 0 1");
        return lesson;
    }
}
