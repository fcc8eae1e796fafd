namespace Slantwise.Records.Evidence;

/// <summary>Differences on the logit scale as tries: what becomes of an even chance.</summary>
internal static class EvenChance
{
    /// <summary>A range of nine in ten reaches so many standard deviations to each side of a normal law.</summary>
    public const double RangeDeviations = 1.6448536269514722;

    /// <summary>The share that succeeds where half would without the difference.</summary>
    /// <param name="easierLogits">How much easier it is; less than 0 for harder.</param>
    public static double Of(double easierLogits) => 1 / (1 + Math.Exp(-easierLogits));
}
