using Slantwise.Engines.Planning.Space;

namespace Slantwise.Records.Halls;

/// <summary>Which way a teacher faces to have most mats in front, and which are behind the back even so.</summary>
/// <param name="FacingRad">The way faced: 0 to the right, then anticlockwise as the hall is drawn, front wall below.</param>
/// <param name="BehindMats">Mats whose middle is behind, as places in the list; empty where all lie in half a turn.</param>
public sealed record TeacherBack(double FacingRad, IReadOnlyList<int> BehindMats)
{
    private const double Near = 1e-9;

    // A mat under the teacher's feet lies neither before nor behind.
    private const double UnderM = 0.001;

    /// <summary>The way faced from a place.</summary>
    /// <param name="place">Where the teacher stands.</param>
    /// <param name="mats">Any number; without one the teacher faces the back wall.</param>
    /// <remarks>That half a turn is in front is a working rule without a source.</remarks>
    public static TeacherBack Of(FloorPoint place, IReadOnlyList<PlacedMat> mats)
    {
        var ways = mats.Select((m, i) => (X: m.Centre.XM - place.XM, Y: m.Centre.YM - place.YM, Mat: i)).Where(w => w.X * w.X + w.Y * w.Y > UnderM * UnderM)
            .Select(w => (Way: Math.Atan2(w.Y, w.X), w.Mat)).ToList();
        if (ways.Count == 0) return new(Math.PI / 2, []);
        // One way is the first that is still seen on the right; the turn from it to the last one seen is the smallest of equal ones.
        var best = ways.Select(first =>
            {
                var turns = ways.Select(w => Turn(first.Way, w.Way)).ToList();
                var seen = turns.Where(t => t <= Math.PI + Near).ToList();
                return (first.Way, seen.Count, Last: seen.Max());
            })
            .OrderByDescending(c => c.Count).ThenBy(c => Math.Round(c.Last, 9)).ThenBy(c => Math.Round(c.Way, 9)).First();
        return new(best.Way + best.Last / 2, [.. ways.Where(w => Turn(best.Way, w.Way) > Math.PI + Near).Select(w => w.Mat)]);
    }

    private static double Turn(double from, double to)
    {
        var turn = Math.IEEERemainder(to - from, 2 * Math.PI);
        return turn < -Near ? turn + 2 * Math.PI : Math.Max(0, turn);
    }
}
