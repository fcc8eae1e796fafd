using Slantwise.Engines.Drawing;
using Slantwise.Engines.Marks;
using Slantwise.Paper.Forms;

namespace Slantwise.Paper;

/// <summary>An address as a QR symbol, for a camera to read from a screen or a wall.</summary>
public static class LinkSymbol
{
    /// <summary>The longest address, in characters: beyond it the modules are too fine for an old tablet's camera.</summary>
    public const int MostLength = 600;

    /// <summary>The symbol with the white that belongs around it, dark on light wherever it stands: cameras look for that.</summary>
    /// <param name="address">What it says, 1 to <see cref="MostLength"/> characters.</param>
    /// <param name="sideMm">The side of the drawing, its white included; more than 0.</param>
    /// <param name="description">What it is, for those who do not see it; empty where a text beside it says the same.</param>
    /// <returns>A square scene: its ground and one outline.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An address that is empty or too long; a side of 0 or less.</exception>
    public static Scene Of(string address, double sideMm, string description)
    {
        if (address.Length is 0 or > MostLength)
            throw new ArgumentOutOfRangeException(nameof(address), address.Length, $"An address in a symbol has 1 to {MostLength} characters.");
        if (!(sideMm > 0)) throw new ArgumentOutOfRangeException(nameof(sideMm), sideMm, "A symbol's side is more than 0 mm.");
        return new Scene(sideMm, sideMm, [new Box(0, 0, sideMm, sideMm, Tone.Ground), Shape(address, 0, 0, sideMm)], description);
    }

    /// <summary>The symbol alone, the white that belongs around it left free inside the square.</summary>
    internal static Outline Shape(string address, double leftMm, double topMm, double sideMm)
    {
        var quiet = sideMm * CodeDrawing.QuietFraction(address);
        return CodeDrawing.Of(address, new CodePlace(leftMm + quiet, topMm + quiet, sideMm - 2 * quiet));
    }
}
