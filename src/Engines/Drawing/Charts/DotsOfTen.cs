namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A range as ten dots: full up to its lower end, dotted within it, empty above.</summary>
/// <remarks>A share of ten is read more surely than a percentage. Source: [Gigerenzer1995], natural frequencies.</remarks>
public static class DotsOfTen
{
    /// <summary>The dots in one row.</summary>
    /// <param name="lowFraction">The lower end of the range, 0 to 1.</param>
    /// <param name="highFraction">The upper end, from the lower to 1.</param>
    /// <param name="dotMm">Diameter of a dot, more than 0.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <returns>Ten dots with a fifth of a dot between. Tenths are rounded outwards, so that the picture never claims more than the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A range outside 0 to 1 or upside down; a dot that is not more than 0.</exception>
    public static Scene Of(double lowFraction, double highFraction, double dotMm, string description)
    {
        if (!(dotMm > 0 && double.IsFinite(dotMm)))
            throw new ArgumentOutOfRangeException(nameof(dotMm), dotMm, "A dot is more than 0 mm wide.");
        var (sure, possible) = TenthsOf(lowFraction, highFraction);
        var (pitchMm, radiusMm, strokeMm) = (dotMm * 1.2, dotMm / 2, dotMm * 0.12);
        var shapes = new List<Shape>();
        for (var i = 0; i < 10; i++)
        {
            var xMm = radiusMm + i * pitchMm;
            if (i < sure)
            {
                shapes.Add(new Disc(xMm, radiusMm, radiusMm, Tone.Accent));
                continue;
            }
            var isPossible = i < possible;
            shapes.Add(new Disc(xMm, radiusMm, radiusMm - strokeMm / 2, isPossible ? Tone.Accent : Tone.Muted, strokeMm));
            if (isPossible) shapes.Add(new Disc(xMm, radiusMm, radiusMm * 0.4, Tone.Accent));
        }
        return new Scene(9 * pitchMm + dotMm, dotMm, shapes, description);
    }

    /// <summary>A range in whole tenths, rounded outwards: "3 to 9 of 10".</summary>
    /// <param name="lowFraction">The lower end of the range, 0 to 1.</param>
    /// <param name="highFraction">The upper end, from the lower to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A range outside 0 to 1 or upside down.</exception>
    public static (int LowTenthsCount, int HighTenthsCount) TenthsOf(double lowFraction, double highFraction)
    {
        if (!(lowFraction >= 0 && lowFraction <= highFraction && highFraction <= 1))
            throw new ArgumentOutOfRangeException(nameof(lowFraction), lowFraction, $"A range lies from 0 to 1 and ends, here at {highFraction}, where it begins or later.");
        // A rounding of the last digit must not add a tenth: 0.3 · 10 is 3, not 3.0000000000000004.
        return ((int)Math.Floor(lowFraction * 10 + 1e-9), (int)Math.Ceiling(highFraction * 10 - 1e-9));
    }
}
