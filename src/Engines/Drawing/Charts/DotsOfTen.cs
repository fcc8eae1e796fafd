namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A share of ten tries as ten dots: full as far as it is expected, with a bracket under them where it likely ends.</summary>
/// <remarks>
/// A share of ten is read more surely than a percentage. Source: [Gigerenzer1995], natural frequencies.
/// What is not sure is told by its form, not by a colour: full dots become rings with a point, the bracket is dashed.
/// </remarks>
public static class DotsOfTen
{
    private const double GapDots = .24;
    private const double BracketDots = .46;

    /// <summary>The dots in one row, the bracket under them.</summary>
    /// <param name="aboutFraction">The share expected, inside the range.</param>
    /// <param name="lowFraction">The lower end of the range, 0 to 1.</param>
    /// <param name="highFraction">The upper end, from the lower to 1.</param>
    /// <param name="dotMm">Diameter of a dot, more than 0.</param>
    /// <param name="isMuted">Whether it is more assumed than seen, and drawn so.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <returns>Ten dots, in all nearly twelve and a quarter dots wide and one and a half high. The range is rounded outwards, so that the picture never claims more than it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A range outside 0 to 1 or upside down, a share outside it; a dot that is not more than 0.</exception>
    public static Scene Of(double aboutFraction, double lowFraction, double highFraction, double dotMm, bool isMuted, string description)
    {
        if (!(dotMm > 0 && double.IsFinite(dotMm)))
            throw new ArgumentOutOfRangeException(nameof(dotMm), dotMm, "A dot is more than 0 mm wide.");
        var full = AboutOf(aboutFraction, lowFraction, highFraction);
        var (low, high) = TenthsOf(lowFraction, highFraction);
        var (pitchMm, radiusMm, strokeMm) = (dotMm * (1 + GapDots), dotMm / 2, dotMm * .1);
        var widthMm = 9 * pitchMm + dotMm;
        var tone = isMuted ? Tone.Muted : Tone.Accent;
        var shapes = new List<Shape>();
        for (var i = 0; i < 10; i++)
        {
            var xMm = radiusMm + i * pitchMm;
            if (i < full && !isMuted) shapes.Add(new Disc(xMm, radiusMm, radiusMm, tone));
            else shapes.Add(new Disc(xMm, radiusMm, radiusMm - strokeMm / 2, Tone.Muted, strokeMm));
            if (i < full && isMuted) shapes.Add(new Disc(xMm, radiusMm, radiusMm * .5, tone));
        }
        // The bracket stands between dots: from after the fewest that may be full to after the most.
        var (fromMm, toMm, lineMm, lineWidthMm) = (After(low), After(high), dotMm * (1 + BracketDots * .6), dotMm * .12);
        if (high > low) shapes.Add(new Line(fromMm, lineMm, toMm, lineMm, lineWidthMm, tone, isMuted));
        foreach (var endMm in new[] { fromMm, toMm }.Distinct())
            shapes.Add(new Line(endMm, lineMm - dotMm * .16, endMm, lineMm + dotMm * .16, lineWidthMm, tone));
        return new Scene(widthMm, dotMm * (1 + BracketDots), shapes, description);

        // The ends keep their stroke inside the picture.
        double After(int count) => Math.Clamp(count * pitchMm - dotMm * GapDots / 2, dotMm * .06, widthMm - dotMm * .06);
    }

    /// <summary>The share expected in whole tenths: "about 6 of 10".</summary>
    /// <param name="aboutFraction">The share expected, inside the range.</param>
    /// <param name="lowFraction">The lower end of the range, 0 to 1.</param>
    /// <param name="highFraction">The upper end, from the lower to 1.</param>
    /// <returns>Rounded to the nearest; it never leaves the range in tenths.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A range outside 0 to 1 or upside down, or a share outside it.</exception>
    public static int AboutOf(double aboutFraction, double lowFraction, double highFraction)
    {
        var (low, high) = TenthsOf(lowFraction, highFraction);
        if (!(aboutFraction >= lowFraction && aboutFraction <= highFraction))
            throw new ArgumentOutOfRangeException(nameof(aboutFraction), aboutFraction, $"What is expected lies in its range, here {lowFraction} to {highFraction}.");
        return Math.Clamp((int)Math.Round(aboutFraction * 10, MidpointRounding.AwayFromZero), low, high);
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
