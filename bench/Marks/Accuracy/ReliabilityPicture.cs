using Slantwise.Engines.Drawing;
using Slantwise.Surface.Tests.Marks.Measures;

namespace Slantwise.Bench.Accuracy;

/// <summary>The chances that were given against the shares that were marked, each with its 95 in 100: on the line where chances mean what they say.</summary>
internal static class ReliabilityPicture
{
    private const double SideMm = 100;
    private const double LeftMm = 24;
    private const double TopMm = 6;

    // Both ends of the scale of log odds: what is rarer lies on the edge.
    private const double LowestFraction = .00003;

    private static readonly (double Fraction, string Words)[] Ticks =
    [
        (.0001, "1 in 10,000"), (.001, "1 in 1,000"), (.01, "1 in 100"), (.1, "1 in 10"), (.5, "1 in 2"), (.9, "9 in 10"), (.99, "99 in 100"), (.999, "999 in 1,000"),
        (.9999, "all but 1 in 10,000"),
    ];

    public static string Svg(IEnumerable<ReliabilityBin> bins)
    {
        var shapes = new List<Shape> { new Box(LeftMm, TopMm, SideMm, SideMm, Tone.Faint, .2), new Line(X(LowestFraction), Y(LowestFraction), X(1), Y(1), .25, Tone.Muted, true) };
        foreach (var (fraction, words) in Ticks)
        {
            shapes.Add(new Line(X(fraction), TopMm + SideMm, X(fraction), TopMm + SideMm + 1.2, .2, Tone.Muted));
            shapes.Add(new Line(LeftMm - 1.2, Y(fraction), LeftMm, Y(fraction), .2, Tone.Muted));
            shapes.Add(new Text(LeftMm - 2, Y(fraction) + .9, words, 6.5, Tone.Muted, TextAnchor.End));
            if (fraction is .001 or .1 or .5 or .9 or .999) shapes.Add(new Text(X(fraction), TopMm + SideMm + 4.2, words, 6.5, Tone.Muted, TextAnchor.Middle));
        }
        foreach (var bin in bins.Where(b => b.Fields > 0))
        {
            var (low, high) = ShareRange.Wilson(bin.Marked, bin.Fields);
            shapes.Add(new Line(X(bin.MeanFraction), Y(low), X(bin.MeanFraction), Y(high), .5, Tone.AccentMiddle));
            shapes.Add(new Disc(X(bin.MeanFraction), Y((double)bin.Marked / bin.Fields), .9, Tone.Accent));
        }
        shapes.Add(new Text(LeftMm + SideMm / 2, TopMm + SideMm + 9, "chance of a mark that the reader gave", 8, Tone.Ink, TextAnchor.Middle));
        shapes.Add(new Text(LeftMm + 2, TopMm + 5, "share of these fields that had one", 8, Tone.Ink));
        return SvgWriter.Write(new(LeftMm + SideMm + 6, TopMm + SideMm + 12, shapes,
            "Chances the reader gave against shares of fields that were marked. Dots near the dashed line mean that chances are what they say; the bars are 95 in 100."));
    }

    private static double X(double fraction) => LeftMm + SideMm * Place(fraction);

    private static double Y(double fraction) => TopMm + SideMm * (1 - Place(fraction));

    private static double Place(double fraction)
    {
        var held = Math.Clamp(fraction, LowestFraction, 1 - LowestFraction);
        var end = Math.Log((1 - LowestFraction) / LowestFraction);
        return (Math.Log(held / (1 - held)) + end) / (2 * end);
    }
}
