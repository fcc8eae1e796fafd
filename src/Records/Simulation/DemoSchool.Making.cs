using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Simulation;

/// <summary>How the invented school is made.</summary>
public sealed partial record DemoSchool
{
    private const ulong NamePurpose = 11;
    private const ulong IdPurpose = 12;

    // Ids of everything but entries are dated here, so that the school keeps its ids whatever day it is made.
    private static readonly DateTimeOffset Founded = new(2026, 1, 5, 8, 0, 0, TimeSpan.Zero);

    /// <summary>The school as it stands on a day.</summary>
    /// <param name="seed">What everything is drawn from; a seed always gives the same school, pupils and sheets.</param>
    /// <param name="today">The day to stand on: lessons lie around it.</param>
    /// <exception cref="InvalidDataException">A library file cannot be read.</exception>
    public static DemoSchool Of(ulong seed, DateOnly today)
    {
        var ids = new SeededIds(Draws.For(seed, IdPurpose));
        Guid NewId() => ids.At(Founded);
        var school = new School { Id = NewId(), Name = "Pellinmoor School" };
        var unit = new DemoUnit(school.Id);
        var sheets = unit.Sheets.Select(sheet => (
            Sheet: new Sheet { SchoolId = school.Id, Id = NewId(), Name = sheet.Name, Draft = sheet.Contents[^1] },
            sheet.Contents)).ToList();
        // The last sheet is chosen but neither printed nor opened yet.
        var frozen = sheets.ToDictionary(
            s => s.Sheet.Id, s => s.Sheet == sheets[^1].Sheet ? (IReadOnlyList<SheetContent>)[] : s.Contents);

        var names = Draws.For(seed, NamePurpose);
        var firstDay = SchoolDayFrom(today);
        var secondDay = SchoolDayFrom(firstDay.AddDays(1));
        var heron = MakeClass("7 Heron", "H", 28, firstDay, [1, 1, 1, 1, null]);
        var kestrel = MakeClass("7 Kestrel", "K", 30, secondDay, [1, 2, 1, 1, null]);
        heron = heron with
        {
            Restrictions =
            [
                Without(heron.Pupils[6], BodyDemand.Impact, heron.Lessons[2].Date),
                Without(heron.Pupils[13], BodyDemand.HandWeight, today.AddDays(28)),
            ],
        };
        kestrel = kestrel with
        {
            Restrictions =
            [
                Without(kestrel.Pupils[3], BodyDemand.Impact, today.AddDays(14)),
                Without(kestrel.Pupils[21], BodyDemand.Inversion, null),
            ],
        };

        // Both classes meet the same levels: what is hard for one is hard for the other.
        var common = unit.WithTruth(new SimulationPlan { Seed = seed, MovementSeed = seed, School = school, Pupils = [], Lessons = [] });
        var plans = new[]
        {
            heron.PlanOf(common with { PupilBents = BentsOf(heron.Pupils, 4, 9, 16, 22) }, new TimeOnly(9, 10), ContentOf, 0.5),
            kestrel.PlanOf(common with { Seed = seed + 1, PupilBents = BentsOf(kestrel.Pupils, 7, 12, 18, 26) }, new TimeOnly(10, 25), ContentOf, 1),
        };
        DemoClass[] classes = [heron, kestrel];
        return new DemoSchool
        {
            School = school,
            Classes = classes.Select(c => c.Group).ToList(),
            Pupils = classes.SelectMany(c => c.Pupils).ToList(),
            Enrolments = classes
                .SelectMany(c => c.Pupils.Select(p => new Enrolment { SchoolId = school.Id, ClassId = c.Group.Id, PupilId = p.Id }))
                .ToList(),
            Restrictions = classes.SelectMany(c => c.Restrictions).ToList(),
            Tasks = unit.Tasks,
            Sheets = sheets.Select(s => s.Sheet with { LatestVersion = frozen[s.Sheet.Id].Count }).ToList(),
            FrozenContents = frozen,
            Lessons = classes.SelectMany(c => c.Lessons).ToList(),
            Incidents = IncidentsOf(heron.Lessons, unit.Tasks, NewId()),
            Simulations = plans.Select(ClassSimulator.Run).ToList(),
        };

        DemoClass MakeClass(string name, string letter, int count, DateOnly lastDay, int?[] versions)
        {
            var group = new SchoolClass
            {
                SchoolId = school.Id,
                Id = NewId(),
                Name = name,
                KeepUntil = new DateOnly(today.Year + 1, 8, 31),
            };
            return new DemoClass
            {
                Group = group,
                Pupils = DemoClass.MakePupils(school.Id, letter, count, names, NewId),
                Restrictions = [],
                Lessons = DemoClass.MakeLessons(group, lastDay, sheets.Select((s, i) => (s.Sheet, versions[i])).ToList(), NewId),
            };
        }

        SheetContent ContentOf(Lesson lesson) => frozen[lesson.SheetId!.Value][lesson.SheetVersion!.Value - 1];

        Restriction Without(Pupil pupil, BodyDemand demand, DateOnly? until) =>
            new() { SchoolId = school.Id, Id = NewId(), PupilId = pupil.Id, Without = demand, Until = until };
    }

    // Four pupils worth a talk: one who always expects too much, one who stays at what does not work, one who stays at what always works,
    // and one who expects too little.
    private static Dictionary<Guid, PupilBent> BentsOf(IReadOnlyList<Pupil> pupils, int over, int stuck, int comfortable, int under) => new()
    {
        [pupils[over].Id] = new() { BiasLogits = 3, HonestyFraction = 0.3 },
        [pupils[stuck].Id] = new() { AbilityLogits = -1.3, TasteFraction = 0.2, ChangeFraction = 0 },
        [pupils[comfortable].Id] = new() { AbilityLogits = 2.5, TasteFraction = 0.97, ChangeFraction = 0 },
        [pupils[under].Id] = new() { AbilityLogits = 0.8, BiasLogits = -1.8, TasteFraction = 0.6 },
    };

    private static DateOnly SchoolDayFrom(DateOnly day) => day.DayOfWeek switch
    {
        DayOfWeek.Saturday => day.AddDays(2),
        DayOfWeek.Sunday => day.AddDays(1),
        _ => day,
    };
}
