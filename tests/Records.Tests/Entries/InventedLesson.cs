using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Entries;

/// <summary>An invented lesson: three pupils, a balance held for seconds and rope jumps counted, three sets of five trials.</summary>
internal static class InventedLesson
{
    public static readonly StillClock Clock = new();
    public static readonly Guid SchoolId = Id(1);
    public static readonly Guid ClassId = Id(2);
    public static readonly Guid LessonId = Id(3);
    public static readonly Guid BalanceId = Id(10);
    public static readonly Guid RopeId = Id(11);
    public static readonly Pupil Alba = new() { SchoolId = SchoolId, Id = Id(20), Code = "A1", DisplayName = "Alba" };
    public static readonly Pupil Bruno = new() { SchoolId = SchoolId, Id = Id(21), Code = "B2", DisplayName = "Bruno" };
    public static readonly Pupil Carys = new() { SchoolId = SchoolId, Id = Id(22), Code = "C3" };

    public static readonly IReadOnlyList<Level> BalanceLevels =
    [
        Hold(30, "arms out", 3m),
        Hold(31, "arms crossed", 4m),
        Hold(32, "eyes closed", 5m),
        Hold(33, "hips up, on hands", 5m) with { Demands = [BodyDemand.Inversion, BodyDemand.HandWeight] },
    ];

    public static readonly IReadOnlyList<Level> RopeLevels =
    [
        new() { Id = Id(40), Name = "two feet", Dose = new(DoseKind.RepetitionsCount, 5m), Demands = [BodyDemand.Impact] },
        new() { Id = Id(41), Name = "one foot", Dose = new(DoseKind.RepetitionsCount, 5m), Demands = [BodyDemand.Impact] },
    ];

    public static SheetContent Towers { get; } = new()
    {
        Title = "Stand like a tower",
        Tasks =
        [
            new() { TaskId = BalanceId, Name = "One-foot balance", Cues = ["Look at one point", "Standing knee soft", "Hips level"], Levels = BalanceLevels },
            new() { TaskId = RopeId, Name = "Rope jump", Cues = ["Land soft", "Elbows in"], Levels = RopeLevels },
        ],
        SetCount = 3,
        TrialCount = 5,
    };

    public static LessonRecord Taught { get; } = new()
    {
        School = new() { Id = SchoolId, Name = "Invented School" },
        Class = new() { SchoolId = SchoolId, Id = ClassId, Name = "7B" },
        Lesson = new() { SchoolId = SchoolId, Id = LessonId, ClassId = ClassId, Date = new(2026, 3, 2), SheetId = Id(4), SheetVersion = 1 },
        Sheet = new() { SchoolId = SchoolId, SheetId = Id(4), Version = 1, Content = Towers, FrozenAt = Clock.Now },
        Pupils = [Alba, Bruno, Carys],
    };

    public static Guid Id(int number) => new(number, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]);

    public static Recorder RecorderOf(LessonRecord record, EntrySource source = EntrySource.File) =>
        new(SchoolId, LessonId, source, "test", Clock, record.Entries);

    /// <summary>The record with more entries, as a store would give it back.</summary>
    public static LessonRecord With(this LessonRecord record, params IEnumerable<Entry?> entries) =>
        record with { Entries = [.. record.Entries, .. entries.OfType<Entry>()] };

    private static Level Hold(int id, string name, decimal holdS) => new() { Id = Id(id), Name = name, Dose = new(DoseKind.HoldS, holdS) };
}
