using System.Globalization;
using Slantwise.Desk.Words;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>How many times one thing is another, as people say it: "half", "two thirds", "1.5 times".</summary>
public static class RatioWords
{
    private static readonly (double Fraction, string Key)[] Named = [(.25, "Quarter"), (1 / 3.0, "Third"), (.5, "Half"), (2 / 3.0, "TwoThirds"), (.75, "ThreeQuarters")];

    /// <summary>The ratio in words.</summary>
    /// <param name="ratioFraction">More than 0.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>A named fraction where one is as near as .04, else the number of times.</returns>
    public static string Of(double ratioFraction, CultureInfo culture)
    {
        if (ratioFraction > 1) return StudioWords.Text(ratioFraction < 1.95 ? "RatioFraction" : "RatioTimes", culture, ratioFraction);
        var (fraction, key) = Named.MinBy(n => Math.Abs(n.Fraction - ratioFraction));
        return Math.Abs(fraction - ratioFraction) < .04 ? StudioWords.Text("Ratio" + key, culture) : StudioWords.Text("RatioFraction", culture, ratioFraction);
    }
}
