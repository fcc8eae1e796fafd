using System.Security.Cryptography;
using Slantwise.Records;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;

namespace Slantwise.Bench.Floor.Load;

/// <summary>A school in which as many lessons as wanted are open at once, each of a class of its own.</summary>
/// <param name="School">The school.</param>
/// <param name="Sheet">What all of them do.</param>
/// <param name="Lessons">The lessons, each with its pupils.</param>
internal sealed record InventedSchool(School School, SheetContent Sheet, IReadOnlyList<(FloorLesson Open, IReadOnlyList<Guid> PupilIds)> Lessons)
{
    private static readonly DateOnly Day = new(2026, 9, 14);

    /// <summary>Makes it, through the store and the hub as the desk does.</summary>
    public static async Task<InventedSchool> MakeAsync(IStore store, int lessonCount, int pupilCount)
    {
        static Guid NewId() => EntryId.New(TimeProvider.System);
        var content = InventedUnit.PlanFor(11, 1, 1, Day).Lessons[0].Content;
        var school = new School { Id = NewId(), Name = "Invented school" };
        var sheet = new Sheet { SchoolId = school.Id, Id = NewId(), Name = content.Title, LatestVersion = 0, Draft = content };
        await store.SaveSchoolAsync(school);
        await store.SaveSheetAsync(sheet);
        var classes = Enumerable.Range(1, lessonCount).Select(i => new SchoolClass { SchoolId = school.Id, Id = NewId(), Name = $"Class {i:0000}" }).ToList();
        var pupils = classes.Select((_, c) => (IReadOnlyList<Pupil>)[.. Enumerable.Range(1, pupilCount).Select(p => new Pupil { SchoolId = school.Id, Id = NewId(), Code = $"P{c + 1:0000}-{p:00}" })]).ToList();
        await store.SaveRosterAsync(school.Id, new()
        {
            Classes = classes,
            Pupils = [.. pupils.SelectMany(p => p)],
            Enrolments = [.. classes.Zip(pupils).SelectMany(pair => pair.Second.Select(p => new Enrolment { SchoolId = school.Id, ClassId = pair.First.Id, PupilId = p.Id }))],
        });
        var lessons = new List<(FloorLesson, IReadOnlyList<Guid>)>();
        await using var hub = new FloorHub(store, TimeProvider.System, RandomNumberGenerator.GetInt32, "bench");
        foreach (var (of, those) in classes.Zip(pupils))
        {
            var lesson = new Lesson { SchoolId = school.Id, Id = NewId(), ClassId = of.Id, Date = Day, SheetId = sheet.Id };
            await store.SaveLessonAsync(lesson);
            lessons.Add((await hub.OpenAsync(school.Id, lesson.Id), [.. those.Select(p => p.Id)]));
        }
        return new InventedSchool(school, content, lessons);
    }
}
