using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Chances;

namespace Slantwise.Records.Evidence.Growth;

/// <summary>What the class as a whole gained from its first lesson with tries to its latest. One pupil's growth cannot be told from one unit, and is not given.</summary>
/// <param name="LessonCount">Lessons from the first with tries to the latest with tries, both counted; 2 or more.</param>
/// <param name="TrialCount">Tries behind it.</param>
/// <param name="ReturnedPupilCount">Pupils with tries in two lessons or more: they alone tell growth from who was there.</param>
/// <param name="PerLesson">The gain a lesson, in logits, with its uncertainty and how much of it is data.</param>
/// <remarks>The model takes into account which levels were chosen and lets each pupil wander from lesson to lesson; the gain is what is common to all.</remarks>
public sealed record SharedGrowth(int LessonCount, int TrialCount, int ReturnedPupilCount, Estimate PerLesson)
{
    /// <summary>Where 5 of 10 were reached in the first lesson, how many of ten would be in the latest: the middle.</summary>
    public double MeanOfEvenFraction => OfEven(PerLesson.MeanLogits);

    /// <summary>The same, lower end of the range.</summary>
    public double LowOfEvenFraction => OfEven(PerLesson.MeanLogits - EvenChance.RangeDeviations * PerLesson.SdLogits);

    /// <summary>The same, upper end.</summary>
    public double HighOfEvenFraction => OfEven(PerLesson.MeanLogits + EvenChance.RangeDeviations * PerLesson.SdLogits);

    /// <summary>Whether more of it was assumed than seen.</summary>
    public bool IsMostlyAssumed => PerLesson.DataShareFraction < .5;

    /// <summary>The growth of a class.</summary>
    /// <param name="chances">What its lessons say.</param>
    /// <param name="pupils">Its pupils, over the same lessons.</param>
    /// <returns>None before the second lesson with tries.</returns>
    public static SharedGrowth? Of(ClassChances chances, IReadOnlyList<PupilEvidence> pupils)
    {
        var lessons = pupils
            .Select(p => p.Tasks.SelectMany(t => t.Sets).Where(s => s.Trials.Count > 0 && s.LevelId is not null).Select(s => s.LessonNumber).Distinct().ToList())
            .Where(l => l.Count > 0).ToList();
        if (lessons.Count == 0) return null;
        var span = chances.LatestLesson + 1 - lessons.SelectMany(l => l).Min();
        if (span < 1 || chances.Fit.Coefficients.FirstOrDefault(c => c.Kind == CoefficientKind.Growth) is not { Kind: CoefficientKind.Growth } growth) return null;
        return new(span + 1, chances.TrialCount, lessons.Count(l => l.Count > 1), growth.Value);
    }

    private double OfEven(double perLesson) => EvenChance.Of(perLesson * (LessonCount - 1));
}
