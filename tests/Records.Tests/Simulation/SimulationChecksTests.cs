using System.Globalization;
using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tests.Entries;

namespace Slantwise.Records.Tests.Simulation;

/// <summary>That invented input passes the same doors as real input.</summary>
public sealed class SimulationChecksTests
{
    private static readonly DemoSchool Demo = DemoSchool.Of(1, new DateOnly(2026, 3, 11));

    [Fact]
    public void Of_DemoTasksSheetsAndLessons_AreClean()
    {
        Assert.Empty(Sentences(Demo.Tasks.SelectMany(TaskCheck.Of)));
        Assert.Empty(Sentences(Demo.Sheets.SelectMany(sheet => SheetCheck.Of(sheet.Draft, Demo.School.Policy))));
        Assert.Empty(Sentences(Demo.FrozenContents.Values.SelectMany(v => v).SelectMany(content => SheetCheck.Of(content, Demo.School.Policy))));
        Assert.Empty(Sentences(Demo.Lessons.SelectMany(lesson => LessonCheck.Of(lesson, Demo.Classes, Demo.Sheets.Single(s => s.Id == lesson.SheetId)))));
    }

    [Fact]
    public void Of_DemoEntries_AreClean() =>
        Assert.All(Demo.Simulations, simulated => Assert.Empty(Sentences(Findings(simulated))));

    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    public void Of_SimulatedEntries_AreClean(ulong seed) =>
        Assert.Empty(Sentences(Findings(ClassSimulator.Run(SimulationPlans.Unit(seed)))));

    [Fact]
    public void Read_SimulatedEntriesFile_GivesEveryEntryBack()
    {
        var simulated = ClassSimulator.Run(SimulationPlans.Unit(lessons: 1));
        var record = Record(simulated, simulated.Plan.Lessons[0]);
        var text = SimulationFiles.Of(simulated)["entries.jsonl"];
        var recorder = new Recorder(record.School.Id, record.Lesson.Id, EntrySource.File, "test", new StillClock(), []);
        var reading = EntryFile.Read("entries.jsonl", text, record, recorder);
        // What paper leaves out is pointed out; nothing is refused.
        Assert.Empty(Sentences(reading.Findings.Where(f => f.Severity == FindingSeverity.Refused)));
        Assert.Equal(simulated.Entries, reading.Entries);
    }

    private static IEnumerable<Finding> Findings(SimulatedClass simulated) => simulated.Plan.Lessons.SelectMany(lesson =>
    {
        var entries = simulated.Entries.Where(e => e.LessonId == lesson.Lesson.Id).ToList();
        var corrected = entries.Select(e => e.SupersedesId).OfType<Guid>().ToHashSet();
        // Only what a correction looks for, so that each check stays quick.
        var record = Record(simulated, lesson) with { Entries = entries.Where(e => corrected.Contains(e.Id)).ToList() };
        return entries.SelectMany(entry => EntryCheck.Of(entry, record));
    });

    private static LessonRecord Record(SimulatedClass simulated, SimulatedLesson lesson) => new()
    {
        School = simulated.Plan.School,
        Class = new SchoolClass { SchoolId = simulated.Plan.School.Id, Id = lesson.Lesson.ClassId, Name = "7" },
        Lesson = lesson.Lesson,
        Sheet = new SheetVersion
        {
            SchoolId = simulated.Plan.School.Id,
            SheetId = lesson.Lesson.SheetId!.Value,
            Version = lesson.Lesson.SheetVersion!.Value,
            Content = lesson.Content,
            FrozenAt = lesson.StartsAt,
        },
        Pupils = simulated.Plan.Pupils,
        Restrictions = simulated.Plan.Restrictions,
    };

    private static IEnumerable<string> Sentences(IEnumerable<Finding> findings) =>
        findings.Select(finding => finding.Sentence(CultureInfo.GetCultureInfo("en")));
}
