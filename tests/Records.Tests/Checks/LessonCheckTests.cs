using Slantwise.Records.Checks;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Checks;

public sealed class LessonCheckTests
{
    private static readonly SchoolClass[] Classes = [Taught.Class];
    private static readonly Sheet Chosen = new() { SchoolId = SchoolId, Id = Id(4), Name = "Towers", Draft = Towers, LatestVersion = 1 };

    [Fact]
    public void Of_PlannedLesson_SaysNothing() => Assert.Empty(LessonCheck.Of(Taught.Lesson, Classes, Chosen));

    [Fact]
    public void Of_NoSheetYet_IsFlagged() =>
        Assert.Equal(["LessonHasNoSheet"], Flagged(Taught.Lesson with { SheetId = null, SheetVersion = null }, null));

    [Fact]
    public void Of_AfterItsRecordsEnd_IsFlagged()
    {
        SchoolClass[] classes = [Taught.Class with { KeepUntil = new DateOnly(2026, 1, 31) }];
        var finding = Assert.Single(LessonCheck.Of(Taught.Lesson, classes, Chosen));
        Assert.Equal("LessonAfterKeepUntil", finding.Key);
        Sentences.AreWhole([finding]);
    }

    [Fact]
    public void Of_BrokenLesson_IsRefused()
    {
        var lesson = Taught.Lesson;
        Assert.Equal(["LessonHasNoClass"], Refused(lesson with { ClassId = Guid.Empty }, Chosen));
        Assert.Equal(["LessonClassUnknown"], Refused(lesson with { ClassId = Id(50) }, Chosen));
        Assert.Equal(["LessonSheetUnknown"], Refused(lesson, null));
        Assert.Equal(["LessonVersionUnknown"], Refused(lesson with { SheetVersion = 2 }, Chosen));
        Assert.Equal(["LessonVersionWithoutSheet"], Refused(lesson with { SheetId = null }, null));
        Assert.Equal(["LessonMatCount"], Refused(lesson with { MatCount = -1 }, Chosen));
        Assert.Equal(["PhaseDuration"], Refused(lesson with { Phases = [new(PhaseKind.Activity, 0, "")] }, Chosen));
        Assert.Equal(["PhaseKindUnknown"], Refused(lesson with { Phases = [new((PhaseKind)9, 5, "")] }, Chosen));
        Assert.Equal(["PhaseNoteTooLong"], Refused(lesson with { Phases = [new(PhaseKind.Activity, 5, new string('x', 301))] }, Chosen));
        Assert.Equal(["LessonAimCount"], Refused(lesson with { Aims = [.. Enumerable.Repeat("a", 6)] }, Chosen));
        Assert.Equal(["LessonAimTooLong"], Refused(lesson with { Aims = [new string('x', 161)] }, Chosen));
        Assert.Equal(["LessonDemonstrationCount"], Refused(lesson with { Demonstration = [.. Enumerable.Repeat("a", 9)] }, Chosen));
        Assert.Equal(["LessonDemonstrationTooLong"], Refused(lesson with { Demonstration = ["a", new string('x', 161)] }, Chosen));
        Assert.Equal(["LessonTitleTooLong"], Refused(lesson with { Title = new string('x', 81) }, Chosen));
    }

    [Fact]
    public void Of_ClassOfAnotherSchool_IsUnknown()
    {
        SchoolClass[] classes = [Taught.Class with { SchoolId = Id(9) }];
        Assert.Contains(LessonCheck.Of(Taught.Lesson, classes, Chosen), f => f is { IsRefused: true, Key: "LessonClassUnknown" });
    }

    private static IEnumerable<string> Flagged(Lesson lesson, Sheet? sheet) =>
        LessonCheck.Of(lesson, Classes, sheet).Where(f => !f.IsRefused).Select(f => f.Key);

    private static IEnumerable<string> Refused(Lesson lesson, Sheet? sheet)
    {
        var findings = LessonCheck.Of(lesson, Classes, sheet);
        Sentences.AreWhole(findings);
        return findings.Where(f => f.IsRefused).Select(f => f.Key);
    }
}
