using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Records.Evidence.Chances;

public sealed partial class ClassChances
{
    /// <summary>The lesson to come, from 0: the one after the latest with a trial, the first where there is none.</summary>
    public int NextLesson => TrialCount == 0 ? 0 : LatestLesson + 1;

    /// <summary>The chance at a level in the middle of the class: of no pupil, so that levels can be compared without comparing pupils.</summary>
    /// <param name="levelId">The level.</param>
    /// <param name="lesson">Which lesson, from 0; it may lie ahead.</param>
    /// <returns>None for a level that the class does not have.</returns>
    public SuccessChance? Middle(Guid levelId, int lesson) =>
        _levels.TryGetValue(levelId, out var level) ? Fit.MiddleChance(level, lesson) : null;
}
