namespace Slantwise.Engines.Statistics.Holds;

/// <summary>How long half of the holds lasted.</summary>
/// <param name="MedianS">The first time by which half had ended; none where more than half were held to the end.</param>
/// <param name="LowS">Lower end of its range; none where even the lower band never falls to a half.</param>
/// <param name="HighS">Upper end of its range; none where the upper band never falls to a half: no limit can be named.</param>
public readonly record struct MedianHold(double? MedianS, double? LowS, double? HighS)
{
    // A product of fractions that is a half in the algebra may miss it by a rounding.
    private const double Half = .5 + 1e-12;

    /// <summary>Reads it off a curve and its bands.</summary>
    /// <remarks>Where the curve lies at a half exactly, the middle of that flat is taken. Source: [BrookmeyerCrowley1982] for the range.</remarks>
    internal static MedianHold Of(IReadOnlyList<SurvivalStep> steps)
    {
        double? median = null;
        for (var i = 0; i < steps.Count && median is null; i++)
        {
            if (steps[i].HeldFraction > Half) continue;
            var next = steps.Skip(i + 1).Where(s => s.FallenCount > 0).Select(s => (double?)s.TimeS).FirstOrDefault();
            median = steps[i].HeldFraction > 1 - Half && next is { } end ? (steps[i].TimeS + end) / 2 : steps[i].TimeS;
        }
        return new(
            median,
            steps.Where(s => s.LowFraction <= Half).Select(s => (double?)s.TimeS).FirstOrDefault(),
            steps.Where(s => s.HighFraction <= Half).Select(s => (double?)s.TimeS).FirstOrDefault());
    }
}
