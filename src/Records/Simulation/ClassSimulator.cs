using Slantwise.Records.Entries;

namespace Slantwise.Records.Simulation;

/// <summary>Invents what a class might write down over a unit of lessons. All of it is invented: no child was observed.</summary>
/// <remarks>
/// Trials follow logit P(success) = ability + gain · lessons − fatigue · trials − difficulty, and holds the log-logistic model with the
/// same numbers. Source: [DeBoeckWilson2004] ch. 2 (from memory) for the model; <c>docs/simulator.md</c> for everything else.
/// </remarks>
public static class ClassSimulator
{
    /// <summary>Runs a plan.</summary>
    /// <param name="plan">Any number of pupils and lessons; no lessons give no entries.</param>
    /// <returns>The entries with what is true behind them: the same for the same plan, on every platform.</returns>
    /// <exception cref="ArgumentException">A lesson, a pupil twice, a sheet with no set or no trial, or a number the model cannot take.</exception>
    public static SimulatedClass Run(SimulationPlan plan)
    {
        Check(plan);
        var truth = TruthMaker.Of(plan);
        var pupils = plan.Pupils.Select((_, i) => new SimulatedPupil(plan, truth, i)).ToList();
        var entries = new List<Entry>();
        for (var lesson = 0; lesson < plan.Lessons.Count; lesson++)
        {
            var typedCount = (int)Math.Ceiling(plan.Lessons[lesson].TypedFraction * pupils.Count);
            var made = pupils
                .SelectMany((pupil, i) => pupil.Attend(plan.Lessons[lesson], lesson, i < typedCount))
                .OrderBy(entry => entry.MadeAt)
                .ToList();
            foreach (var entry in made) entries.Add(entry with { DeviceSequence = entries.Count + 1 });
        }
        return new SimulatedClass(plan, entries, truth);
    }

    private static void Check(SimulationPlan plan)
    {
        if (plan.Pupils.DistinctBy(p => p.Id).Count() != plan.Pupils.Count)
        {
            throw new ArgumentException("A plan names each pupil once.", nameof(plan));
        }
        if (plan.Lessons.DistinctBy(l => l.Lesson.Id).Count() != plan.Lessons.Count)
        {
            throw new ArgumentException("A plan names each lesson once.", nameof(plan));
        }
        if (plan.Lessons.Any(l => l.Content.SetCount < 1 || l.Content.TrialCount < 1))
        {
            throw new ArgumentException("A simulated sheet has at least one set and one trial.", nameof(plan));
        }
        if (!double.IsFinite(plan.HoldSlopeLogits) || plan.HoldSlopeLogits <= 0)
        {
            throw new ArgumentException("The slope of holds is a number above 0.", nameof(plan));
        }
        double[] fractions =
        [
            plan.Population.SharedAbilityFraction, plan.Population.FromExperienceFraction, plan.Population.SteadinessFraction,
            plan.Population.HonestyFraction, plan.Population.ChangeFraction, .. plan.Lessons.Select(l => l.TypedFraction),
        ];
        if (!fractions.All(f => f is >= 0 and <= 1))
        {
            throw new ArgumentException("Shares and chances lie between 0 and 1.", nameof(plan));
        }
    }
}
