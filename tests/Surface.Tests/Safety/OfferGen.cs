using CsCheck;
using Slantwise.Records.Lessons;
using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Safety;

/// <summary>Random lessons: any policy, restrictions begun, over, to come and lifted by hand, levels with and without postures. A level's name is one word that nothing else is called.</summary>
internal static class OfferGen
{
    public static readonly DateOnly Day = new(2026, 3, 12);

    private static readonly Guid SchoolId = new("10000000-0000-0000-0000-000000000001");
    private static readonly string[] Postures = ["headstand", "handstand", "front-support", "star-stand", "long-sit"];
    private static readonly Pupil[] Class = [Pupil(1, "Ada"), Pupil(2, "Ben"), Pupil(3, "Cleo")];

    private static readonly Gen<Dose> Doses = Gen.Select(Gen.Int[0, 3], Gen.Int[1, 16], (kind, amount) =>
        kind == 0 ? new Dose(DoseKind.RepetitionsCount, amount) : new Dose(DoseKind.HoldS, amount / 2m));

    private static readonly Gen<SheetTask> Tasks =
        from levels in Gen.Select(Gen.Enum<BodyDemand>().Array[0, 2], Gen.Int[-4, Postures.Length - 1], Doses).Array[1, 5]
        select new SheetTask
        {
            TaskId = Guid.Empty, Name = "Task", Purpose = "Stay still.", Cues = ["Push the floor away"], Caution = "Stop when I call stop.",
            Levels = [.. levels.Select(l => new Level
            {
                Id = Guid.Empty, Name = "", Dose = l.Item3, Demands = [.. l.Item1.Distinct().Order()], Posture = l.Item2 < 0 ? null : Postures[l.Item2],
            })],
        };

    private static readonly Gen<SafetyPolicy> Policies =
        from choices in Gen.Enum<PolicyChoice>().Array[4]
        from conditions in Gen.Enum<SafetyCondition>().Array[0, 2]
        from capS in Gen.Int[1, 8]
        select new SafetyPolicy
        {
            HeadWeight = choices[0], Inversion = choices[1], Rolls = choices[2], Spotting = choices[3], HeadConditions = [.. conditions.Distinct()], HeadHoldCapS = capS,
        };

    private static readonly Gen<Restriction?> Restrictions =
        from pupil in Gen.Int[0, 2]
        from without in Gen.Enum<BodyDemand>()
        from days in Gen.Int[-2, 2].Array[3]
        from has in Gen.Bool.Array[3]
        from isLifted in Gen.Int[0, 3]
        from id in Gen.Guid
        let made = new Restriction
        {
            SchoolId = SchoolId, Id = id, PupilId = Class[pupil].Id, Without = without,
            Since = has[0] ? Day.AddDays(days[0]) : null, Until = has[1] ? Day.AddDays(days[1]) : null, IsLiftedByHand = has[2],
        }
        select isLifted == 0 ? made.LiftedOn(Day.AddDays(days[2])) : made;

    public static readonly Gen<LessonRecord> Lessons =
        from tasks in Tasks.Array[1, 2]
        from policy in Policies
        from restrictions in Restrictions.Array[0, 6]
        select new LessonRecord
        {
            School = new() { Id = SchoolId, Name = "Brook School", Policy = policy },
            Class = new() { SchoolId = SchoolId, Id = new Guid(2, 0, 0, new byte[8]), Name = "5B" },
            Lesson = new() { SchoolId = SchoolId, Id = new Guid(3, 0, 0, new byte[8]), ClassId = new Guid(2, 0, 0, new byte[8]), Date = Day, SheetId = new Guid(4, 0, 0, new byte[8]), SheetVersion = 1 },
            Sheet = new()
            {
                SchoolId = SchoolId, SheetId = new Guid(4, 0, 0, new byte[8]), Version = 1, FrozenAt = DateTimeOffset.UnixEpoch,
                Content = new() { Title = "Shapes", SetCount = 2, TrialCount = 3, Tasks = [.. tasks.Select(Numbered)] },
            },
            Pupils = Class,
            Restrictions = [.. restrictions.OfType<Restriction>()],
        };

    /// <summary>A plain second version of what policy and restrictions leave a pupil, or anybody.</summary>
    public static bool IsLeft(LessonRecord record, Level level, Pupil? pupil)
    {
        var (policy, day) = (record.School.Policy, record.Lesson.Date);
        var asks = new HashSet<BodyDemand>(level.Demands);
        if (level.Posture is { } key) asks.UnionWith(PostureDemands.Of(PostureLibrary.Find(key)!));
        if (asks.Contains(BodyDemand.Inversion) && policy.Inversion == PolicyChoice.NotAllowed) return false;
        if (asks.Contains(BodyDemand.Roll) && policy.Rolls == PolicyChoice.NotAllowed) return false;
        if (asks.Contains(BodyDemand.Spotting) && policy.Spotting == PolicyChoice.NotAllowed) return false;
        if (asks.Contains(BodyDemand.HeadWeight))
        {
            if (policy.HeadWeight == PolicyChoice.NotAllowed || policy.HeadConditions.Count == 0) return false;
            if (level.Dose.Kind == DoseKind.HoldS && level.Dose.Amount > policy.HeadHoldCapS) return false;
        }
        foreach (var restriction in record.Restrictions)
        {
            var hasBegun = restriction.Since is not { } since || since <= day;
            var isOver = !restriction.IsLiftedByHand && restriction.Until is { } until && until < day;
            if (restriction.PupilId == pupil?.Id && hasBegun && !isOver && asks.Contains(restriction.Without)) return false;
        }
        return true;
    }

    /// <summary>The names of all levels of a sheet that are left to a pupil, or to anybody, and of those that are not.</summary>
    public static (IReadOnlyList<string> Left, IReadOnlyList<string> Removed) Names(LessonRecord record, Pupil? pupil)
    {
        var levels = record.Sheet!.Content.Tasks.SelectMany(t => t.Levels).ToLookup(l => IsLeft(record, l, pupil), l => l.Name);
        return ([.. levels[true]], [.. levels[false]]);
    }

    private static SheetTask Numbered(SheetTask task, int place) => task with
    {
        TaskId = new Guid(100 + place, 0, 0, new byte[8]), Name = place == 0 ? "Upside" : "Beside",
        Levels = [.. task.Levels.Select((l, i) => l with { Id = new Guid(1000 + 10 * place + i, 0, 0, new byte[8]), Name = $"Zq{place}{i}k" })],
    };

    private static Pupil Pupil(int number, string name) => new() { SchoolId = SchoolId, Id = new Guid(10 + number, 0, 0, new byte[8]), Code = $"5B-{number}", DisplayName = name };
}
