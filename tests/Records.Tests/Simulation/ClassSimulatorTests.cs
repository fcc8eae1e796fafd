using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

public sealed class ClassSimulatorTests
{
    [Fact]
    public void Run_SameSeedTwice_SameBytes()
    {
        var (one, two) = (SimulationFiles.Of(ClassSimulator.Run(SimulationPlans.Unit())), SimulationFiles.Of(ClassSimulator.Run(SimulationPlans.Unit())));
        Assert.Equal(one, two);
    }

    [Fact]
    public void Run_OtherSeed_OtherEntriesAndTruth()
    {
        var (one, two) = (SimulationFiles.Of(ClassSimulator.Run(SimulationPlans.Unit(7))), SimulationFiles.Of(ClassSimulator.Run(SimulationPlans.Unit(8))));
        Assert.All(["entries.jsonl", "trials.csv", "predictions.csv", "truth.csv"], file => Assert.NotEqual(one[file], two[file]));
    }

    [Fact]
    public void Run_OneMorePupil_ChangesNothingForTheOthers()
    {
        var plan = SimulationPlans.Unit();
        var without = ClassSimulator.Run(plan with { Pupils = plan.Pupils.Take(27).ToList() });
        var with = ClassSimulator.Run(plan);
        var last = plan.Pupils[27].Id;
        Assert.Equal(
            without.Entries.Select(e => (e.Id, e.Fact, e.MadeAt)),
            with.Entries.Where(e => e.PupilId != last).Select(e => (e.Id, e.Fact, e.MadeAt)));
    }

    [Fact]
    public void Run_AnyPlan_EntriesAreDatedNumberedAndUnlike()
    {
        var simulated = ClassSimulator.Run(SimulationPlans.Unit());
        var starts = simulated.Plan.Lessons.ToDictionary(l => l.Lesson.Id, l => l.StartsAt);
        Assert.Equal(simulated.Entries.Count, simulated.Entries.DistinctBy(e => e.Id).Count());
        Assert.Equal(Enumerable.Range(1, simulated.Entries.Count).Select(n => (long)n), simulated.Entries.Select(e => e.DeviceSequence));
        Assert.Equal(simulated.Entries.OrderBy(e => e.MadeAt).Select(e => e.MadeAt), simulated.Entries.Select(e => e.MadeAt));
        Assert.All(simulated.Entries, e =>
        {
            Assert.InRange(e.MadeAt - starts[e.LessonId], TimeSpan.Zero, TimeSpan.FromMinutes(60));
            // Source: [RFC9562] section 5.7: version 7, variant 10, milliseconds first.
            Assert.Equal((7, 0x8), (e.Id.Version, e.Id.Variant & 0xC));
            Assert.Equal(e.MadeAt.ToUnixTimeMilliseconds(), Convert.ToInt64(e.Id.ToString("N")[..12], 16));
            Assert.Null(e.ReceivedAt);
        });
    }

    [Fact]
    public void Run_DefaultMess_LeavesGapsAndCorrections()
    {
        var simulated = ClassSimulator.Run(SimulationPlans.Unit(pupils: 200));
        var current = simulated.Entries.GroupBy(e => e.LessonId).SelectMany(EntryLog.Current).ToList();
        var sets = current.Count(e => e.Fact is Choice);
        Assert.InRange(current.Count(e => e.Fact is Prediction), 0.85 * sets, 0.97 * sets);
        Assert.InRange(current.Count(e => e.Fact is Decision), 0.85 * sets, 0.97 * sets);
        Assert.InRange(current.Where(e => e.Fact is CueTick).Select(e => (e.LessonId, e.PupilId, e.TaskId, e.SetNumber)).Distinct().Count(), 0.85 * sets, 0.97 * sets);
        Assert.Contains(current, e => e.Fact is Presence { IsPresent: false });
        Assert.Contains(current, e => e.Fact is Visit);
        Assert.Contains(current, e => e.Fact is TeacherCheck);
        Assert.Contains(current, e => e.Fact is Trial { HeldS: null });
        var slips = simulated.Entries.Where(e => e.SupersedesId is not null).ToList();
        Assert.NotEmpty(slips);
        var byId = simulated.Entries.ToDictionary(e => e.Id);
        Assert.All(slips, e =>
        {
            var slip = byId[e.SupersedesId!.Value];
            Assert.Equal(EntrySlot.Of(slip), EntrySlot.Of(e));
            Assert.True(slip.MadeAt < e.MadeAt);
            Assert.NotEqual(((Trial)slip.Fact).IsSuccess, ((Trial)e.Fact).IsSuccess);
        });
    }

    [Fact]
    public void Run_NoMess_EverySetIsComplete()
    {
        var plan = SimulationPlans.Unit() with { Mess = PaperMess.None };
        var simulated = ClassSimulator.Run(plan);
        foreach (var lesson in plan.Lessons)
        {
            var sets = simulated.Entries.Where(e => e.LessonId == lesson.Lesson.Id && e.SetNumber is not null)
                .GroupBy(e => (e.PupilId, e.TaskId, e.SetNumber)).ToList();
            Assert.Equal(plan.Pupils.Count * lesson.Content.Tasks.Count * lesson.Content.SetCount, sets.Count);
            Assert.All(sets, set =>
            {
                var cues = lesson.Content.Tasks.Single(t => t.TaskId == set.Key.TaskId).Cues.Count;
                Assert.Single(set, e => e.Fact is Choice);
                Assert.Single(set, e => e.Fact is Decision);
                Assert.Equal(lesson.Content.TrialCount, set.Count(e => e.Fact is Trial));
                Assert.Equal(cues, set.Count(e => e.Fact is CueTick));
            });
        }
    }

    [Fact]
    public void Run_HalfTyped_RegisterForAllAndSheetsForHalf()
    {
        var plan = SimulationPlans.Unit(lessons: 1) with { Mess = PaperMess.None };
        plan = plan with { Lessons = [plan.Lessons[0] with { TypedFraction = 0.5 }] };
        var entries = ClassSimulator.Run(plan).Entries;
        Assert.Equal(28, entries.Count(e => e.Fact is Presence));
        Assert.Equal(plan.Pupils.Take(14).Select(p => p.Id).ToHashSet(), entries.Where(e => e.Fact is Choice).Select(e => e.PupilId!.Value).ToHashSet());
    }

    [Fact]
    public void Run_AnyRestrictionsAndPolicy_NobodyAtARemovedLevel() =>
        Gen.Select(Gen.ULong, Gen.Select(Gen.Int[0, 9], Gen.Enum<BodyDemand>(), Gen.Int[-10, 40]).Array[0, 12], Gen.Enum<PolicyChoice>()).Sample(
            (seed, picks, inversion) =>
            {
                var plan = SimulationPlans.Unit(seed, pupils: 10);
                plan = plan with
                {
                    School = plan.School with { Policy = new SafetyPolicy { Inversion = inversion } },
                    Restrictions = picks.Select(pick => new Restriction
                    {
                        SchoolId = plan.School.Id,
                        Id = Guid.Empty,
                        PupilId = plan.Pupils[pick.Item1].Id,
                        Without = pick.Item2,
                        Until = pick.Item3 > 30 ? null : SimulationPlans.Day.AddDays(pick.Item3),
                    }).ToList(),
                };
                var lessons = plan.Lessons.ToDictionary(l => l.Lesson.Id);
                return ClassSimulator.Run(plan).Entries.Where(e => e.Fact is Choice).All(e =>
                {
                    var lesson = lessons[e.LessonId];
                    var levels = lesson.Content.Tasks.Single(t => t.TaskId == e.TaskId).Levels;
                    var ruledOut = plan.Restrictions.Where(r => r.PupilId == e.PupilId && (r.Until is null || lesson.Lesson.Date <= r.Until)).Select(r => r.Without);
                    var demands = levels.Single(l => l.Id == ((Choice)e.Fact).LevelId).Demands;
                    return !demands.Intersect(ruledOut).Any()
                        && (inversion == PolicyChoice.Planned || !demands.Contains(BodyDemand.Inversion));
                });
            },
            iter: 60);

    [Fact]
    public void Run_TaskWithoutAnAllowedLevel_LeavesItOut()
    {
        var plan = SimulationPlans.OneTask(3, 4, 2, 3, PredictionKind.SuccessCount, SimulationPlans.Hold(1, 3) with { Demands = [BodyDemand.HeadWeight] });
        Assert.All(ClassSimulator.Run(plan).Entries, e => Assert.IsType<Presence>(e.Fact));
    }

    [Fact]
    public void Run_PlanThatCannotBe_IsRefusedInWords()
    {
        var plan = SimulationPlans.Unit(pupils: 2, lessons: 1);
        Assert.Throws<ArgumentException>(() => ClassSimulator.Run(plan with { Pupils = [plan.Pupils[0], plan.Pupils[0]] }));
        Assert.Throws<ArgumentException>(() => ClassSimulator.Run(plan with { Lessons = [plan.Lessons[0], plan.Lessons[0]] }));
        Assert.Throws<ArgumentException>(() => ClassSimulator.Run(plan with { HoldSlopeLogits = 0 }));
        Assert.Throws<ArgumentException>(() => ClassSimulator.Run(plan with { Population = new() { ChangeFraction = double.NaN } }));
        Assert.Throws<ArgumentException>(() => ClassSimulator.Run(plan with { Lessons = [plan.Lessons[0] with { TypedFraction = 1.1 }] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => InventedUnit.PlanFor(1, 0, 1, SimulationPlans.Day));
        Assert.Throws<ArgumentOutOfRangeException>(() => InventedUnit.PlanFor(1, 1, 201, SimulationPlans.Day));
    }
}
