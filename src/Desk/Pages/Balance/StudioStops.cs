using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>What keeps a part from going further, as a sentence.</summary>
public static class StudioStops
{
    /// <summary>The sentence: at most two joints, since a third helps nobody.</summary>
    /// <param name="stops">The strongest first; empty where no joint is at its end.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Of(IReadOnlyList<JointStop> stops, CultureInfo culture) => stops.Count switch
    {
        0 => StudioWords.Text("StopsPlain", culture),
        _ when stops.Count == 1 || stops[0].Kind == JointStopKind.Straight => StudioWords.Text("StopsOne", culture, Of(stops[0], culture)),
        _ => StudioWords.Text("StopsTwo", culture, Of(stops[0], culture), Of(stops[1], culture)),
    };

    private static string Of(JointStop stop, CultureInfo culture)
    {
        // A straight knee is at the least of its bend for everybody but the engine, which lets it go a little further.
        var end = stop.Kind == JointStopKind.Most ? "Most" : "Least";
        return StudioWords.Text($"Stop{stop.Joint}{end}", culture, Side(stop.Side, "", culture), Side(stop.Side, "F", culture));
    }

    private static string Side(Side side, string gender, CultureInfo culture) =>
        side == Engines.Mechanics.Side.Middle ? "" : StudioWords.Text($"Side{side}{gender}", culture);
}
