using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Simulation;

/// <summary>Plans of any size with the demo school's tasks, for studies and measurements.</summary>
public static class InventedUnit
{
    private const ulong IdPurpose = 13;

    /// <summary>A class with codes and no names, taught once a week; the demo school's sheets take turns.</summary>
    /// <param name="seed">What everything is drawn from.</param>
    /// <param name="pupilCount">1 to 100,000.</param>
    /// <param name="lessonCount">1 to 200.</param>
    /// <param name="firstDay">The day of the first lesson.</param>
    /// <exception cref="ArgumentOutOfRangeException">Pupils or lessons outside their range.</exception>
    /// <exception cref="InvalidDataException">A library file cannot be read.</exception>
    public static SimulationPlan PlanFor(ulong seed, int pupilCount, int lessonCount, DateOnly firstDay)
    {
        if (pupilCount is < 1 or > 100_000)
            throw new ArgumentOutOfRangeException(nameof(pupilCount), pupilCount, "A simulated class has 1 to 100,000 pupils.");
        if (lessonCount is < 1 or > 200)
            throw new ArgumentOutOfRangeException(nameof(lessonCount), lessonCount, "A simulated unit has 1 to 200 lessons.");

        var ids = new SeededIds(Draws.For(seed, IdPurpose));
        var founded = new DateTimeOffset(firstDay, new TimeOnly(8, 0), TimeSpan.Zero);
        Guid NewId() => ids.At(founded);
        var school = new School { Id = NewId(), Name = "Invented school" };
        var unit = new DemoUnit(school.Id);
        var classId = NewId();
        var sheets = unit.Sheets.Select(sheet => (Id: NewId(), Version: sheet.Contents.Count, Content: sheet.Contents[^1])).ToList();
        return unit.WithTruth(new SimulationPlan
        {
            Seed = seed,
            School = school,
            Pupils = Enumerable.Range(1, pupilCount)
                .Select(number => new Pupil { SchoolId = school.Id, Id = NewId(), Code = $"P{number:00000}" })
                .ToList(),
            Lessons = Enumerable.Range(0, lessonCount)
                .Select(i => (Sheet: sheets[i % sheets.Count], Date: firstDay.AddDays(7 * i)))
                .Select(taught => new SimulatedLesson
                {
                    Lesson = new Lesson
                    {
                        SchoolId = school.Id,
                        Id = NewId(),
                        ClassId = classId,
                        Date = taught.Date,
                        SheetId = taught.Sheet.Id,
                        SheetVersion = taught.Sheet.Version,
                    },
                    Content = taught.Sheet.Content,
                    StartsAt = new DateTimeOffset(taught.Date, new TimeOnly(9, 0), TimeSpan.Zero),
                })
                .ToList(),
        });
    }
}
