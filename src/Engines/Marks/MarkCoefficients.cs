namespace Slantwise.Engines.Marks;

/// <summary>The coefficients of the model of marks.</summary>
internal static class MarkCoefficients
{
    // Logistic regression with a ridge of .05 on the traits of fields of simulated photos (bench/Marks/Accuracy fit): fair photos with weight 1, seeds 10001 to
    // 10520; hard photos with weight .5, seeds 30001 to 30208; careless hands with weight .1, seeds 20001 to 20156.
    public static readonly double[] Logits = [-7.749, .984, 5.86, -.603, 14.785, 2.526, 5.728, 10.487, -.385, -15.867, -.564];
}
