using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>Draws what pupils, levels and cues of a plan are like.</summary>
internal static class TruthMaker
{
    // One sequence of draws a purpose; pupils are numbered from these on.
    public const ulong FirstPupilTruth = 1UL << 32;
    public const ulong FirstPupilConduct = 2UL << 32;
    public const ulong FirstPupilIds = 3UL << 32;
    private const ulong Movements = 1;

    public static SimulationTruth Of(SimulationPlan plan)
    {
        var tasks = TasksOf(plan);
        var draws = Draws.For(plan.MovementSeed ?? plan.Seed, Movements);
        var levels = tasks.SelectMany(task => LevelsOf(plan, task, draws)).ToList();
        var cues = tasks.SelectMany(task => CuesOf(plan, task, draws)).ToList();
        var families = levels.Select(level => level.Family).Distinct().ToList();
        var pupils = plan.Pupils
            .Select((pupil, i) => PupilOf(plan, pupil, families, Draws.For(plan.Seed, FirstPupilTruth + (ulong)i)))
            .ToList();
        return new SimulationTruth(pupils, levels, cues);
    }

    // One entry a task: a level or cue that only a later sheet shows is still one of the task's.
    private static List<SheetTask> TasksOf(SimulationPlan plan) => plan.Lessons
        .SelectMany(lesson => lesson.Content.Tasks)
        .GroupBy(task => task.TaskId)
        .Select(same => same.MaxBy(task => task.Cues.Count)! with
        {
            Levels = same.SelectMany(task => task.Levels).DistinctBy(level => level.Id).ToList(),
        })
        .ToList();

    private static List<LevelTruth> LevelsOf(SimulationPlan plan, SheetTask task, Draws draws) => task.Levels
        .Select((level, i) => LevelOf(plan, task, level, ShareOfLadder(i, task.Levels.Count), draws.NextNormal(0, plan.LevelSdLogits)))
        .ToList();

    private static double ShareOfLadder(int index, int count) => count == 1 ? 0.5 : (double)index / (count - 1);

    private static LevelTruth LevelOf(SimulationPlan plan, SheetTask task, Level level, double shareOfLadder, double stray)
    {
        var bent = plan.LevelBents.GetValueOrDefault(level.Id);
        return new LevelTruth
        {
            TaskId = task.TaskId,
            Level = level,
            Family = plan.Families.GetValueOrDefault(task.TaskId) ?? task.TaskId.ToString(),
            DifficultyLogits = bent?.DifficultyLogits
                ?? plan.EasiestLogits + ((plan.HardestLogits - plan.EasiestLogits) * shareOfLadder) + stray,
            PullLogits = bent?.PullLogits ?? 0,
            HoldSlopeLogits = plan.HoldSlopeLogits,
        };
    }

    private static List<CueTruth> CuesOf(SimulationPlan plan, SheetTask task, Draws draws) => task.Cues
        .Select((_, i) => (Number: i + 1, Ease: draws.NextNormal(0.8, 0.5)))
        .Select(cue => plan.CueBents.FirstOrDefault(bent => bent.TaskId == task.TaskId && bent.CueNumber == cue.Number) is { } bent
            ? new CueTruth(task.TaskId, cue.Number, bent.EaseLogits)
            : new CueTruth(task.TaskId, cue.Number, cue.Ease))
        .ToList();

    private static PupilTruth PupilOf(SimulationPlan plan, Pupil pupil, IReadOnlyList<string> families, Draws draws)
    {
        var population = plan.Population;
        var bent = plan.PupilBents.GetValueOrDefault(pupil.Id) ?? new PupilBent();
        var shared = draws.NextNormal(0, population.AbilitySdLogits * Math.Sqrt(population.SharedAbilityFraction));
        var ownSd = population.AbilitySdLogits * Math.Sqrt(1 - population.SharedAbilityFraction);
        return new PupilTruth
        {
            PupilId = pupil.Id,
            AbilityLogits = families.ToDictionary(family => family, _ => Set(bent.AbilityLogits, shared + draws.NextNormal(0, ownSd))),
            LearningLogits = draws.NextNormal(population.LearningLogits, population.LearningSdLogits),
            FatigueLogits = population.FatigueLogits,
            BiasLogits = Set(bent.BiasLogits, draws.NextNormal(population.BiasLogits, population.BiasSdLogits)),
            TasteFraction = Set(
                bent.TasteFraction, Math.Clamp(draws.NextNormal(population.TasteFraction, population.TasteSdFraction), 0.2, 0.95)),
            SteadinessFraction = Near(population.SteadinessFraction, 0.2, draws),
            HonestyFraction = Set(bent.HonestyFraction, Near(population.HonestyFraction, 0.15, draws)),
            ChangeFraction = Set(bent.ChangeFraction, Near(population.ChangeFraction, 0.1, draws)),
        };
    }

    // The draw is made even where it is not used, so that setting one pupil changes no other number.
    private static double Set(double? bent, double drawn) => bent ?? drawn;

    // A mean of 0 or 1 is meant for everybody; elsewhere the spread shrinks towards the ends, so that the mean stays the mean.
    private static double Near(double mean, double reach, Draws draws)
    {
        var most = Math.Min(reach, Math.Min(mean, 1 - mean));
        return mean + (most * ((2 * draws.NextFraction()) - 1));
    }
}
