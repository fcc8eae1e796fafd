using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Statistics.Orders;

/// <summary>How much a class's times grow a lesson, each pupil compared with themselves only: who is absent when moves nothing.</summary>
/// <param name="PupilCount">Pupils with times in two lessons or more; the others say nothing.</param>
/// <param name="TimeCount">Their times.</param>
/// <param name="GrowthNats">Log of the factor a lesson; none where no pupil has two lessons.</param>
/// <param name="ErrorNats">Its standard error, leaving out one pupil at a time; none for a single pupil.</param>
/// <param name="LowNats">Lower end of the range, by Student's law with one degree less than pupils.</param>
/// <param name="HighNats">Upper end.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>
/// The common slope within pupils. It is the class's: a single pupil's growth cannot be told from one unit. Where pupils move to harder levels their
/// times do not show what they learnt. Source: [FitzmauriceLairdWare2011] section 9.2.
/// </remarks>
public readonly record struct ClassGrowth(
    int PupilCount, int TimeCount, double? GrowthNats, double? ErrorNats, double? LowNats, double? HighNats, OrderCautions Cautions)
{
    /// <summary>The change a lesson: .05 is a twentieth more.</summary>
    public double? PerLessonFraction => GrowthNats is { } growth ? Math.Exp(growth) - 1 : null;

    /// <summary>The growth of some times.</summary>
    /// <param name="times">Any number, any order; several of one pupil in one lesson all count.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time that is not above 0 or not finite; a confidence that is not between 0 and 1.</exception>
    public static ClassGrowth Of(IReadOnlyList<LessonTime> times, double confidenceFraction)
    {
        Confidence.Check(confidenceFraction);
        foreach (var time in times)
            if (!(time.TimeS > 0 && double.IsFinite(time.TimeS)))
                throw new ArgumentOutOfRangeException(nameof(times), time.TimeS, "A time is above 0 seconds and a number.");

        var own = times.GroupBy(t => t.Pupil).Where(g => g.Select(t => t.Lesson).Distinct().Count() > 1).Select(g =>
        {
            var (x, y) = (g.Average(t => (double)t.Lesson), g.Average(t => Math.Log(t.TimeS)));
            return (Together: g.Sum(t => (t.Lesson - x) * (Math.Log(t.TimeS) - y)), Square: g.Sum(t => (t.Lesson - x) * (t.Lesson - x)), Count: g.Count());
        }).ToList();
        var cautions = own.Count == 0 ? OrderCautions.NoData : own.Count < 10 ? OrderCautions.FewPupils : OrderCautions.None;
        if (own.Count == 0) return new(0, 0, null, null, null, null, cautions);

        var (together, square, count) = (own.Sum(o => o.Together), own.Sum(o => o.Square), own.Sum(o => o.Count));
        if (own.Count == 1) return new(1, count, together / square, null, null, null, cautions);
        var spread = new MeanSquare();
        foreach (var pupil in own) spread.Add((together - pupil.Together) / (square - pupil.Square));
        var half = StudentT.InvCDF(0, 1, own.Count - 1, (1 + confidenceFraction) / 2) * spread.JackknifeError;
        return new(own.Count, count, together / square, spread.JackknifeError, together / square - half, together / square + half, cautions);
    }
}
