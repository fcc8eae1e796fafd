namespace Slantwise.Engines.Statistics.Orders;

/// <summary>How a time changes with practice, fitted in two ways that answer two questions.</summary>
/// <param name="PointCount">The points.</param>
/// <param name="InSeconds">The law whose misses in seconds are smallest: early, large times weigh most. None where it was not found.</param>
/// <param name="InLogs">The law whose misses in proportion are smallest. None below three points at different times.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>Show the two together; where they differ much a power of practice is not the shape. Source: [NewellRosenbloom1981].</remarks>
public sealed record LearningCurve(int PointCount, PowerLaw? InSeconds, PowerLaw? InLogs, OrderCautions Cautions)
{
    private const int RoundsAtMost = 100;

    /// <summary>The curves of some times.</summary>
    /// <param name="points">Any number, any order: a class's mean times lesson by lesson, not one pupil's handful.</param>
    /// <exception cref="ArgumentOutOfRangeException">Practice or a time that is not above 0 or not finite.</exception>
    public static LearningCurve Fit(IReadOnlyList<PracticePoint> points)
    {
        foreach (var point in points)
        {
            if (!(point.PracticeCount > 0 && double.IsFinite(point.PracticeCount) && point.TimeS > 0 && double.IsFinite(point.TimeS)))
                throw new ArgumentOutOfRangeException(nameof(points), point, "Practice and its time are above 0 and numbers.");
        }
        if (points.Count == 0) return new(0, null, null, OrderCautions.NoData);
        var cautions = points.Count < 5 ? OrderCautions.FewPoints : OrderCautions.None;
        if (points.Count < 3 || points.Select(p => p.PracticeCount).Distinct().Count() < 2) return new(points.Count, null, null, cautions | OrderCautions.FewPoints);

        var logs = Line(points.Select(p => (Math.Log(p.PracticeCount), Math.Log(p.TimeS), 1.0)).ToList());
        var inLogs = new PowerLaw(Math.Exp(logs.At0), logs.Slope, logs.Error);
        var inSeconds = Seconds(points, inLogs);
        return new(points.Count, inSeconds, inLogs, inSeconds is null ? cautions | OrderCautions.NotConverged : cautions);
    }

    // Gauss and Newton's way: near a law with logs a + b·log n, a miss in seconds is the law's time times the miss in logs, so each round is
    // a weighted line through what is left over.
    private static PowerLaw? Seconds(IReadOnlyList<PracticePoint> points, PowerLaw start)
    {
        double Misses(PowerLaw law) => points.Sum(p => (p.TimeS - law.TimeS(p.PracticeCount)) * (p.TimeS - law.TimeS(p.PracticeCount)));
        var now = start;
        for (var round = 0; round < RoundsAtMost; round++)
        {
            var law = now;
            var step = Line(points.Select(p => (Math.Log(p.PracticeCount), p.TimeS / law.TimeS(p.PracticeCount) - 1, law.TimeS(p.PracticeCount) * law.TimeS(p.PracticeCount))).ToList());
            var (length, misses) = (1.0, Misses(law));
            PowerLaw To(double part) => new(law.FirstS * Math.Exp(part * step.At0), law.ExponentNats + part * step.Slope, step.Error);
            // So small a step moves the misses by less than a double can tell, and is taken without looking.
            if (Math.Abs(step.At0) + Math.Abs(step.Slope) < 1e-7) return To(1);
            while (length > 1e-9 && !(Misses(To(length)) < misses)) length /= 2;
            if (length <= 1e-9) return null;
            now = To(length);
        }
        return null;
    }

    private static (double At0, double Slope, double Error) Line(List<(double X, double Y, double Weight)> points)
    {
        var weight = points.Sum(p => p.Weight);
        var (x, y) = (points.Sum(p => p.Weight * p.X) / weight, points.Sum(p => p.Weight * p.Y) / weight);
        var square = points.Sum(p => p.Weight * (p.X - x) * (p.X - x));
        var slope = points.Sum(p => p.Weight * (p.X - x) * (p.Y - y)) / square;
        var left = points.Sum(p => p.Weight * (p.Y - y - slope * (p.X - x)) * (p.Y - y - slope * (p.X - x)));
        return (y - slope * x, slope, Math.Sqrt(left / (points.Count - 2) / square));
    }
}
