namespace Slantwise.Engines.Statistics.Responses;

/// <summary>How much of a task a level asks for.</summary>
/// <remarks>
/// Each measure is taken against a fixed amount of its own (5 s, 5 repetitions, 3 m, 1 m high, a target of 1 m), so that the
/// model's middle does not move with the levels that happen to be on a sheet.
/// </remarks>
public readonly record struct LevelDose
{
    private LevelDose(DoseMeasure measure, double amount, double hardness) =>
        (Measure, Amount, HardnessLogits) = (measure, amount, hardness);

    /// <summary>What is measured.</summary>
    public DoseMeasure Measure { get; }

    /// <summary>The natural logarithm of the dose over its measure's fixed amount, signed so that more is harder: what the slope multiplies.</summary>
    public double HardnessLogits { get; }

    internal double Amount { get; }

    /// <summary>A hold of some seconds.</summary>
    /// <param name="holdS">More than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A hold that is not a number above 0.</exception>
    public static LevelDose Hold(double holdS) => Of(DoseMeasure.Hold, holdS, 5, 1);

    /// <summary>Some repetitions without a miss.</summary>
    /// <param name="repetitions">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1.</exception>
    public static LevelDose Repetitions(int repetitions) => Of(DoseMeasure.Repetitions, repetitions, 5, 1);

    /// <summary>A distance.</summary>
    /// <param name="distanceM">More than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance that is not a number above 0.</exception>
    public static LevelDose Distance(double distanceM) => Of(DoseMeasure.Distance, distanceM, 3, 1);

    /// <summary>A height.</summary>
    /// <param name="heightM">More than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height that is not a number above 0.</exception>
    public static LevelDose Height(double heightM) => Of(DoseMeasure.Height, heightM, 1, 1);

    /// <summary>A target of some width.</summary>
    /// <param name="widthM">More than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width that is not a number above 0.</exception>
    public static LevelDose TargetSize(double widthM) => Of(DoseMeasure.TargetSize, widthM, 1, -1);

    /// <summary>A dose against its measure's fixed amount.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An amount that is not a number above 0.</exception>
    private static LevelDose Of(DoseMeasure measure, double amount, double reference, int sign)
    {
        if (!(amount > 0 && double.IsFinite(amount)))
            throw new ArgumentOutOfRangeException(nameof(amount), amount, "A dose is a number above 0.");
        return new(measure, amount, sign * Math.Log(amount / reference));
    }
}
