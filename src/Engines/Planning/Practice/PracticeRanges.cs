namespace Slantwise.Engines.Planning.Practice;

/// <summary>What a plan gives where people vary: medians and 90 % ranges over simulated lessons.</summary>
/// <param name="RunCount">Simulated lessons behind every number.</param>
/// <param name="FewestTrials">Trials of the pupil who has fewest in a lesson.</param>
/// <param name="MiddleTrials">Trials of the pupil in the middle (the lower one of two).</param>
/// <param name="MostTrials">Trials of the pupil who has most.</param>
/// <param name="WaitingFraction">The share of the time at the mats in which a pupil only waits, mean over pupils.</param>
/// <param name="LastDoneS">When the last one has finished the planned trials, from the begin of the lesson.</param>
/// <param name="InTimeRuns">In how many of the simulated lessons the last one finishes in time.</param>
/// <remarks>
/// Ranges say how lessons differ if the mean times are right; that the means are guessed comes on top. Ends of a range from R lessons are themselves
/// off by some lessons: with 400, the lower end is the 11th to the 30th lesson's 19 times in 20.
/// </remarks>
public sealed record PracticeRanges(
    int RunCount, TrialRange FewestTrials, TrialRange MiddleTrials, TrialRange MostTrials, ShareRange WaitingFraction, TimeRange LastDoneS, int InTimeRuns)
{
    /// <summary>Simulates a plan.</summary>
    /// <param name="plan">Within the ranges of its properties.</param>
    /// <param name="spread">How much people vary; each standard deviation 0 to 1.5.</param>
    /// <param name="runs">Simulated lessons, 20 to 100,000; 400 are usually enough.</param>
    /// <param name="seed">The same seed gives the same lessons on one platform. Two plans with one seed meet the same people: their difference is the plan's.</param>
    /// <param name="law">How times vary.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or a time outside the range its property names; runs not of 20 to 100,000; a spread not of 0 to 1.5.</exception>
    public static PracticeRanges Of(PracticePlan plan, TimeSpread spread, int runs, ulong seed, TimeLaw law = TimeLaw.LogNormal)
    {
        plan.Check();
        if (runs is < 20 or > 100_000) throw new ArgumentOutOfRangeException(nameof(runs), runs, "20 to 100,000 lessons are simulated.");
        if (spread is not { TurnSd: >= 0 and <= 1.5, PupilSd: >= 0 and <= 1.5 }) throw new ArgumentOutOfRangeException(nameof(spread), spread, "A spread is 0 to 1.5.");

        var (fewest, middle, most) = (new int[runs], new int[runs], new int[runs]);
        var (waiting, done) = (new double[runs], new double[runs]);
        for (var run = 0; run < runs; run++)
        {
            var people = Enumerable.Range(0, plan.PupilsAtMats).Select(i => new VaryingPupil(seed, ((ulong)run << 16) | (uint)i, spread, law)).ToArray();
            var lesson = PracticeRun.Of(plan, Math.Max(0, plan.AtMatsS), (i, turn) => people[i].BusyFactor(turn), (i, turn) => people[i].AwayFactor(turn));
            var trials = lesson.Trials.Order().ToArray();
            (fewest[run], middle[run], most[run]) = (trials[0], trials[(trials.Length - 1) / 2], trials[^1]);
            (waiting[run], done[run]) = (lesson.WaitingFraction, lesson.LastDoneS);
        }
        var inTime = done.Count(d => d <= plan.AtMatsS);
        var fixedS = plan.LessonS - plan.AtMatsS;
        return new(runs, Trials(fewest), Trials(middle), Trials(most), Shares(waiting), Times([.. done.Select(d => d + fixedS)]), inTime);
    }

    private static TrialRange Trials(int[] values) => new(Rank(values, 0.05), Rank(values, 0.5), Rank(values, 0.95));

    private static ShareRange Shares(double[] values) => new(Rank(values, 0.05), Rank(values, 0.5), Rank(values, 0.95));

    private static TimeRange Times(double[] values) => new(Rank(values, 0.05), Rank(values, 0.5), Rank(values, 0.95));

    // The value of a lesson that happened, not one between two: half a trial is none.
    private static T Rank<T>(T[] values, double share)
    {
        Array.Sort(values);
        return values[Math.Max(0, (int)Math.Ceiling(share * values.Length - 1e-9) - 1)];
    }
}
