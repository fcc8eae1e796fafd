namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>The part of a factor's range that levels may take.</summary>
/// <param name="FactorKey">The factor.</param>
/// <param name="First">The place of its easiest value in the factor's range, from 0.</param>
/// <param name="Last">The place of its hardest, at least <paramref name="First"/>; the same where the factor stays.</param>
public readonly record struct LadderSpan(string FactorKey, int First, int Last)
{
    /// <summary>Steps from its easy to its hard end; 0 where the factor stays.</summary>
    public int StepCount => Last - First;
}
