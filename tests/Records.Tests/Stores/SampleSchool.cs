using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Stores;

/// <summary>A small school with one of everything, its ids made from a number so that two schools can share them on purpose.</summary>
internal sealed class SampleSchool
{
    public SampleSchool(int number = 1, int idsFrom = 1)
    {
        Id = IdOf(0xA0 + number);
        School = new School { Id = Id, Name = $"School {number}", Policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned, Rolls = PolicyChoice.NotAllowed } };
        Class = new SchoolClass { SchoolId = Id, Id = IdOf(idsFrom * 100 + 1), Name = "7B", RosterKey = "c-1", KeepUntil = new DateOnly(2028, 7, 31) };
        Pupils = Enumerable.Range(1, 4).Select(i => new Pupil
        {
            SchoolId = Id, Id = IdOf(idsFrom * 100 + 10 + i), Code = $"P{i:00}", DisplayName = i == 1 ? null : $"Ñandú {i} 🤸", RosterKey = i < 3 ? $"u-{i}" : null,
        }).ToList();
        Task = new MovementTask
        {
            SchoolId = Id, Id = IdOf(idsFrom * 100 + 30), Name = "One-foot balance", Purpose = "Stand still \"on\" one foot.",
            Cues = ["Eyes on a point", "Hüfte über dem Fuß"], Caution = "Clear floor.",
            Levels =
            [
                new Level { Id = IdOf(idsFrom * 100 + 31), Name = "arms out", Dose = new Dose(DoseKind.HoldS, 5m), Posture = "one-foot-arms-out" },
                new Level { Id = IdOf(idsFrom * 100 + 32), Name = "eyes closed", Dose = new Dose(DoseKind.HoldS, 7.5m), Demands = [BodyDemand.HandWeight, BodyDemand.Impact] },
            ],
        };
        Sheet = new Sheet
        {
            SchoolId = Id, Id = IdOf(idsFrom * 100 + 40), Name = "Balances", LatestVersion = 0,
            Draft = new SheetContent { Title = "Balance", Tasks = [SheetTask.Of(Task, Task.Levels)], SetCount = 2, TrialCount = 4, Predicts = PredictionKind.HoldS },
        };
        Lesson = new Lesson
        {
            SchoolId = Id, Id = IdOf(idsFrom * 100 + 50), ClassId = Class.Id, Date = new DateOnly(2026, 9, 14), Title = "Balance 1", SheetId = Sheet.Id, MatCount = 8,
            Phases = [new LessonPhase(PhaseKind.Instruction, 5, "Show"), new LessonPhase(PhaseKind.Activity, 25, "")],
        };
        Restriction = new Restriction { SchoolId = Id, Id = IdOf(idsFrom * 100 + 60), PupilId = Pupils[0].Id, Without = BodyDemand.Impact, Until = new DateOnly(2026, 10, 1) };
    }

    public Guid Id { get; }
    public School School { get; }
    public SchoolClass Class { get; }
    public IReadOnlyList<Pupil> Pupils { get; }
    public MovementTask Task { get; }
    public Sheet Sheet { get; }
    public Lesson Lesson { get; }
    public Restriction Restriction { get; }

    public RosterSave Roster => new()
    {
        Classes = [Class],
        Pupils = Pupils,
        Enrolments = Pupils.Select((p, i) => new Enrolment { SchoolId = Id, ClassId = Class.Id, PupilId = p.Id, IsCurrent = i < 3 }).ToList(),
    };

    public static Guid IdOf(int number) => new($"01990000-0000-7000-8000-{number:x12}");

    public async Task SaveToAsync(IStore store)
    {
        await store.SaveSchoolAsync(School);
        await store.SaveRosterAsync(Id, Roster);
        await store.SaveTaskAsync(Task);
        await store.SaveSheetAsync(Sheet);
        await store.SaveLessonAsync(Lesson);
        await store.SaveRestrictionAsync(Restriction);
    }

    /// <summary>The n-th trial entry of a pupil, alike for alike arguments.</summary>
    public Entry Trial(int number, int pupil = 0) => new()
    {
        SchoolId = Id, Id = IdOf(100_000 + number), LessonId = Lesson.Id, PupilId = Pupils[pupil].Id, TaskId = Task.Id,
        SetNumber = 1, TrialNumber = number, Fact = new Trial(number % 3 > 0, number / 10.0), Source = EntrySource.Floor,
        DeviceId = "tablet-4", DeviceSequence = number, MadeAt = new DateTimeOffset(2026, 9, 14, 9, 0, 0, TimeSpan.Zero).AddSeconds(number),
    };
}
