namespace Slantwise.Engines.Statistics.Responses;

/// <summary>Some trials of one pupil at one level in one lesson.</summary>
/// <param name="Pupil">An index into the pupils.</param>
/// <param name="Level">An index into the levels.</param>
/// <param name="Lesson">Which lesson, 0 for the first; one apart is one lesson apart.</param>
/// <param name="Successes">How many succeeded, 0 to <paramref name="Trials"/>.</param>
/// <param name="Trials">How many trials, 1 or more; exactly 1 where a time is given.</param>
/// <param name="HeldS">How long the one trial was held, 0 or more, by a stopwatch; none where nobody timed it. Only for levels with a hold as dose.</param>
public readonly record struct ResponseTrial(int Pupil, int Level, int Lesson, int Successes, int Trials, double? HeldS = null)
{
    /// <summary>One trial that was ticked or left open.</summary>
    /// <param name="pupil">An index into the pupils.</param>
    /// <param name="level">An index into the levels.</param>
    /// <param name="lesson">Which lesson, 0 for the first.</param>
    /// <param name="hasSucceeded">Whether it succeeded.</param>
    /// <param name="heldS">Seconds on the stopwatch; none without one.</param>
    public static ResponseTrial Single(int pupil, int level, int lesson, bool hasSucceeded, double? heldS = null) =>
        new(pupil, level, lesson, hasSucceeded ? 1 : 0, 1, heldS);
}
