using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>Lessons to print, made in memory: an invented school with invented pupils.</summary>
internal static class PaperLessons
{
    private static readonly Guid SchoolId = Id(1);

    public static readonly SheetTask OneFoot = Task(100, "One-foot balance", "Stand on one foot like a tree and stay still.",
        ["Eyes on one spot", "Hips level", "Standing knee soft", "Free foot off the other leg"], "",
        ("Arms out, eyes open", new Dose(DoseKind.HoldS, 5), []),
        ("Arms crossed, eyes open", new Dose(DoseKind.HoldS, 5), []),
        ("Arms out, on a folded mat", new Dose(DoseKind.HoldS, 8), []),
        ("Arms out, eyes closed", new Dose(DoseKind.HoldS, 3), []));

    public static readonly SheetTask Tripod = Task(200, "Balances with hands and knees", "Make a strong shape on the patches you choose.",
        ["Hands flat, fingers spread", "Push the floor away", "Feel equal weight on every patch"], "Keep your head off the floor. Stop when I call stop.",
        ("Two hands, two knees", new Dose(DoseKind.HoldS, 5), []),
        ("Two hands, one knee", new Dose(DoseKind.HoldS, 5), []),
        ("One hand, one knee, other side", new Dose(DoseKind.HoldS, 5), []),
        ("Hips high, hands and feet", new Dose(DoseKind.HoldS, 4), [BodyDemand.Inversion]),
        ("Three points with the head", new Dose(DoseKind.HoldS, 3), [BodyDemand.HeadWeight, BodyDemand.Inversion]));

    public static readonly SheetTask Rope = Task(300, "Rope jumping", "Jump the rope so softly that nobody hears you land.",
        ["Elbows close to the ribs", "Small jumps", "Land on the balls of the feet"], "Two big steps away from everybody's rope.",
        ("Rope on the floor, jump over and back", new Dose(DoseKind.RepetitionsCount, 10), [BodyDemand.Impact]),
        ("Swing, step over", new Dose(DoseKind.RepetitionsCount, 5), []),
        ("Two feet, rebound jump between", new Dose(DoseKind.RepetitionsCount, 8), [BodyDemand.Impact]),
        ("Two feet, no rebound", new Dose(DoseKind.RepetitionsCount, 10), [BodyDemand.Impact]),
        ("Running step", new Dose(DoseKind.RepetitionsCount, 20), [BodyDemand.Impact]),
        ("Backwards", new Dose(DoseKind.RepetitionsCount, 10), [BodyDemand.Impact]));

    public static readonly SheetTask Throw = Task(400, "Throw to a target", "Hit the hoop with the bean bag from where you choose.",
        ["Opposite foot forward", "Elbow high", "Follow through to the target"], "",
        ("Underarm, big hoop", new Dose(DoseKind.TargetSizeM, 0.8m), []),
        ("Underarm, from further away", new Dose(DoseKind.DistanceM, 4), []),
        ("Overarm", new Dose(DoseKind.DistanceM, 4.5m), []));

    private static readonly string[] Names =
    [
        "Amara Okafor", "Ben", "Chiara L.", "Dawit", "Elif", "Finn", "Guadalupe Hernández Villanueva", "Hana", "Idris", "Jonas", "Kwame",
        "Leïla", "Mateo", "Noor", "Oskar", "Priya", "Quentin", "Rosa", "Søren", "Tariq", "Ulla", "Viktor", "Wanjiru", "Xiang", "Ynés", "Zoë",
        "Ángel", "Łukasz", "Mei", "Sam",
    ];

    /// <summary>A class on a sheet, nobody restricted.</summary>
    public static LessonRecord Of(int pupilCount, SheetContent content) => new()
    {
        School = new School { Id = SchoolId, Name = "Riverbend School" },
        Class = new SchoolClass { SchoolId = SchoolId, Id = Id(2), Name = "5B" },
        Lesson = new Lesson
        {
            SchoolId = SchoolId, Id = Id(3), ClassId = Id(2), Date = new DateOnly(2026, 3, 12), Title = "Balance 2", SheetId = Id(4), SheetVersion = 1,
        },
        Sheet = new SheetVersion { SchoolId = SchoolId, SheetId = Id(4), Version = 1, Content = content, FrozenAt = DateTimeOffset.UnixEpoch },
        Pupils = [.. Enumerable.Range(0, pupilCount).Select(i => Pupil(i, Names[i % Names.Length]))],
    };

    public static LessonRecord Of(int pupilCount, params SheetTask[] tasks) => Of(pupilCount, new SheetContent { Title = "Balance", Tasks = tasks });

    /// <summary>What is printed on the task sheets' pages.</summary>
    public static IReadOnlyList<Scene> Pages(LessonRecord record, PaperOptions options) => [.. TaskSheetPages.Of(record, options).Select(p => p.Scene)];

    public static LessonRecord WithRestriction(this LessonRecord record, Pupil pupil, BodyDemand without) => record with
    {
        Restrictions =
        [
            .. record.Restrictions,
            new Restriction { SchoolId = SchoolId, Id = Id(900 + record.Restrictions.Count), PupilId = pupil.Id, Without = without },
        ],
    };

    public static LessonRecord WithAdaptation(this LessonRecord record, Pupil pupil, SheetTask task, string text) => record with
    {
        Adaptations = [.. record.Adaptations, new PupilAdaptation { SchoolId = SchoolId, PupilId = pupil.Id, TaskId = task.TaskId, Text = text }],
    };

    public static Pupil Pupil(int number, string? name) =>
        new() { SchoolId = SchoolId, Id = Id(1000 + number), Code = $"5B-{number + 1:00}", DisplayName = name };

    public static SheetTask Task(
        int number, string name, string purpose, string[] cues, string caution, params (string Name, Dose Dose, BodyDemand[] Demands)[] levels) => new()
        {
            TaskId = Id(number),
            Name = name,
            Purpose = purpose,
            Cues = cues,
            Caution = caution,
            Levels = [.. levels.Select((l, i) => new Level { Id = Id(number + 1 + i), Name = l.Name, Dose = l.Dose, Demands = l.Demands })],
        };

    private static Guid Id(int number) => new(number, 0, 0, new byte[8]);
}
