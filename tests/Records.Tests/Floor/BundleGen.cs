using System.Globalization;
using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;
using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Files;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Floor;

/// <summary>Random lessons: tasks of the library in either language and the school's own, any policy, restrictions over and still holding.</summary>
internal static class BundleGen
{
    private static readonly string[] Postures = ["headstand", "handstand", "front-support", "star-stand", "long-sit"];

    private static readonly Gen<SheetTask> LibraryTask =
        from language in Gen.OneOf(Gen.Const("en"), Gen.Const("es"))
        from file in Gen.Int[0, 5]
        from kept in Gen.Bool.Array[6]
        from renamed in Gen.Int[0, 3]
        let task = TaskLibrary.Read(CultureInfo.GetCultureInfo(language), SchoolId)[file].Task!
        let levels = task.Levels.Where((_, i) => kept[i]).ToList()
        select SheetTask.Of(task, levels.Count > 0 ? levels : task.Levels) with { Name = renamed == 0 ? "Renamed" : task.Name };

    private static readonly Gen<Dose> Doses = Gen.Select(Gen.OneOf(Gen.Const(DoseKind.HoldS), Gen.Const(DoseKind.RepetitionsCount)), Gen.Int[1, 12], (kind, amount) => new Dose(kind, amount / 2m));

    private static readonly Gen<SheetTask> OwnTask =
        from levels in Gen.Select(Gen.Enum<BodyDemand>().Array[0, 2], Gen.Int[-3, Postures.Length - 1], Gen.Guid, Doses).Array[1, 6]
        from id in Gen.Guid
        select new SheetTask
        {
            TaskId = id, Name = "Our own", Cues = ["Soft knees"],
            Levels = [.. levels.Select(l => new Level
            {
                Id = l.Item3, Name = $"way {l.Item3}", Dose = l.Item4, Demands = [.. l.Item1.Distinct().Order()], Posture = l.Item2 < 0 ? null : Postures[l.Item2],
            })],
        };

    private static readonly Gen<Restriction> Ruled =
        from pupil in Gen.Int[0, 2]
        from without in Gen.Enum<BodyDemand>()
        from days in Gen.Int[-3, 3]
        from since in Gen.Int[-3, 3]
        from isOpen in Gen.Bool
        from hasBegun in Gen.Bool
        from isByHand in Gen.Bool
        from id in Gen.Guid
        select new Restriction
        {
            SchoolId = SchoolId, Id = id, PupilId = Taught.Pupils[pupil].Id, Without = without, Until = isOpen ? null : Taught.Lesson.Date.AddDays(days),
            Since = hasBegun ? null : Taught.Lesson.Date.AddDays(since), IsLiftedByHand = isByHand,
        };

    private static readonly Gen<SafetyPolicy> Policies =
        from choices in Gen.Enum<PolicyChoice>().Array[4]
        from conditions in Gen.Enum<SafetyCondition>().Array[0, 2]
        from capS in Gen.Int[1, 6]
        select new SafetyPolicy
        {
            HeadWeight = choices[0], Inversion = choices[1], Rolls = choices[2], Spotting = choices[3],
            HeadConditions = [.. conditions.Distinct()], HeadHoldCapS = capS,
        };

    public static readonly Gen<LessonRecord> Lessons =
        from tasks in Gen.OneOf(LibraryTask, OwnTask).Array[1, 3]
        from policy in Policies
        from restrictions in Ruled.Array[0, 5]
        from said in Gen.Select(Gen.Int[0, 2], Gen.Int[1, 3], Gen.Int[0, 3], Gen.Bool).Array[0, 8]
        let sheet = Towers with { Tasks = [.. tasks.DistinctBy(t => t.TaskId)] }
        let record = Taught with
        {
            School = Taught.School with { Policy = policy },
            Sheet = Taught.Sheet! with { Content = sheet },
            Restrictions = restrictions,
        }
        select record.With(Log(record, said));

    /// <summary>Every kind of device with those it serves.</summary>
    public static IEnumerable<(FloorDeviceKind Kind, IReadOnlyList<Pupil> Pupils)> Devices(LessonRecord record) =>
    [
        (FloorDeviceKind.Pupil, [Alba]), (FloorDeviceKind.Pupil, [Bruno]), (FloorDeviceKind.Pair, [Alba, Carys]), (FloorDeviceKind.Pair, [Bruno]),
        (FloorDeviceKind.Station, record.Pupils), (FloorDeviceKind.Teacher, record.Pupils), (FloorDeviceKind.Board, []),
    ];

    /// <summary>A plain second version of what policy and restrictions leave a pupil, or anybody.</summary>
    public static bool IsLeft(LessonRecord record, Level level, Pupil? pupil)
    {
        var asks = new HashSet<BodyDemand>(level.Demands);
        if (level.Posture is { } key) asks.UnionWith(PostureDemands.Of(PostureLibrary.Find(key)!));
        var policy = record.School.Policy;
        if (asks.Contains(BodyDemand.HeadWeight))
        {
            if (policy.HeadWeight == PolicyChoice.NotAllowed || policy.HeadConditions.Count == 0) return false;
            if (level.Dose.Kind == DoseKind.HoldS && level.Dose.Amount > policy.HeadHoldCapS) return false;
        }
        if (asks.Contains(BodyDemand.Inversion) && policy.Inversion == PolicyChoice.NotAllowed) return false;
        if (asks.Contains(BodyDemand.Roll) && policy.Rolls == PolicyChoice.NotAllowed) return false;
        if (asks.Contains(BodyDemand.Spotting) && policy.Spotting == PolicyChoice.NotAllowed) return false;
        foreach (var restriction in record.Restrictions)
        {
            var isOver = restriction.Until is { } until && until < record.Lesson.Date && !restriction.IsLiftedByHand;
            var isToCome = restriction.Since is { } since && since > record.Lesson.Date;
            if (restriction.PupilId == pupil?.Id && !isOver && !isToCome && asks.Contains(restriction.Without)) return false;
        }
        return true;
    }

    // Choices among what is left: a level that was removed later stays in the log as it happened, by its id alone.
    private static IEnumerable<Entry?> Log(LessonRecord record, (int Pupil, int Set, int Level, bool IsNote)[] said)
    {
        var recorder = RecorderOf(record, EntrySource.Floor);
        foreach (var (number, set, level, isNote) in said)
        {
            var pupil = record.Pupils[number];
            var task = record.Sheet!.Content.Tasks[0];
            var left = task.Levels.Where(l => IsLeft(record, l, pupil)).ToList();
            if (isNote) yield return recorder.Put(pupil.Id, null, null, null, new Note("left arm"));
            else if (left.Count > 0) yield return recorder.Put(pupil.Id, task.TaskId, set, null, new Choice(left[level % left.Count].Id));
        }
    }
}
