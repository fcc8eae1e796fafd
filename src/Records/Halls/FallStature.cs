using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Halls;

/// <summary>The stature that falling circles are reckoned with. Nobody's height is asked.</summary>
/// <remarks>
/// By age: the taller of the two medians of the published table, and a tenth more. That about two in a hundred are taller still is from memory: the table's spread is near a twentieth of the median.
/// Without an age: 1.80 m, above the largest median of the table. A working rule, ours.
/// </remarks>
public static class FallStature
{
    /// <summary>The youngest age that can be said.</summary>
    public const int FirstAge = 5;

    /// <summary>The oldest.</summary>
    public const int LastAge = 18;

    /// <summary>Where no age is said.</summary>
    public const double WithoutAgeM = 1.8;

    private const double MoreFraction = 0.1;

    /// <summary>The stature to reckon with.</summary>
    /// <param name="ageYears">Whole years, 5 to 18; none where nobody said.</param>
    /// <returns>In metres, rounded up to whole centimetres.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An age not of 5 to 18.</exception>
    public static double OfM(int? ageYears)
    {
        if (ageYears is not { } age) return WithoutAgeM;
        if (age is < FirstAge or > LastAge) throw new ArgumentOutOfRangeException(nameof(ageYears), age, $"An age of a class is {FirstAge} to {LastAge} years.");
        var medianCm = Math.Max(StatureMedian.OfCm(age, Sex.Male), StatureMedian.OfCm(age, Sex.Female));
        return Math.Ceiling(Math.Round(medianCm * (1 + MoreFraction), 6)) / 100;
    }
}
