namespace Slantwise.Engines.Statistics.Orders;

/// <summary>A time that changes by one factor with each doubling of practice: first · practice^exponent.</summary>
/// <param name="FirstS">The time at the first try.</param>
/// <param name="ExponentNats">Log of the factor for practice e times as long: below 0 where times fall, above where holds grow.</param>
/// <param name="ExponentErrorNats">Its standard error.</param>
public readonly record struct PowerLaw(double FirstS, double ExponentNats, double ExponentErrorNats)
{
    /// <summary>The change with each doubling of practice: −0.2 is a fifth less.</summary>
    public double PerDoublingFraction => Math.Pow(2, ExponentNats) - 1;

    /// <summary>The time it foretells.</summary>
    /// <param name="practiceCount">Above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Practice that is not above 0.</exception>
    public double TimeS(double practiceCount) => practiceCount > 0
        ? FirstS * Math.Pow(practiceCount, ExponentNats)
        : throw new ArgumentOutOfRangeException(nameof(practiceCount), practiceCount, "Practice is more than 0.");
}
