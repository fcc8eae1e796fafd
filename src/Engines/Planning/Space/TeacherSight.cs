namespace Slantwise.Engines.Planning.Space;

/// <summary>What a teacher sees from a place, looking round: mats whose middle no high obstacle hides. Pupils hide nothing.</summary>
/// <param name="Place">Where the teacher stands.</param>
/// <param name="HiddenMats">Mats whose middle is hidden, as places in the list.</param>
/// <param name="SeenFraction">The share of the mats that is seen, 0 to 1; 1 where there is none.</param>
/// <param name="FarthestM">The distance to the farthest mat's middle; 0 where there is none.</param>
/// <param name="SpanDeg">The angle that all mats lie in, 0 to 360: up to about 180 no mat is behind the back of who faces them. 0 for one mat or none.</param>
public sealed record TeacherSight(FloorPoint Place, IReadOnlyList<int> HiddenMats, double SeenFraction, double FarthestM, double SpanDeg)
{
    /// <summary>What is seen from a place.</summary>
    /// <param name="hall">Within the ranges of its properties.</param>
    /// <param name="mats">Any number.</param>
    /// <param name="place">Where the teacher stands; inside a high obstacle nothing beyond it is seen.</param>
    /// <exception cref="ArgumentOutOfRangeException">The hall outside its range.</exception>
    public static TeacherSight Of(Hall hall, IReadOnlyList<PlacedMat> mats, FloorPoint place)
    {
        hall.Check();
        var hidden = Enumerable.Range(0, mats.Count).Where(m => hall.Obstacles.Any(o => o.IsHigh && o.Place.Hides(place, mats[m].Centre))).ToArray();
        var farthest = mats.Count == 0 ? 0 : mats.Max(m => Math.Sqrt(Square(m.Centre.XM - place.XM) + Square(m.Centre.YM - place.YM)));
        return new(place, hidden, mats.Count == 0 ? 1 : 1 - (double)hidden.Length / mats.Count, farthest, SpanOf(place, mats));
    }

    /// <summary>
    /// The place from which most is seen; of several such one outside of all falling circles, then one with no mat behind the back, then the one nearest to its farthest mat, then the first
    /// from the front left. To stand with the back to a wall is common practice; that 180 degrees are the limit is a working rule without a source.
    /// </summary>
    /// <param name="hall">Within the ranges of its properties.</param>
    /// <param name="need">What mats measure: nobody stands on one.</param>
    /// <param name="mats">Any number.</param>
    /// <param name="stepM">Places looked at lie so far apart, half a step from the walls; .1 to 10.</param>
    /// <returns>None where there is no place to stand on the grid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hall or the mat's need outside its range; a step not of .1 to 10 m.</exception>
    public static TeacherSight? Best(Hall hall, MatNeed need, IReadOnlyList<PlacedMat> mats, double stepM)
    {
        hall.Check();
        need.Check();
        if (!(stepM is >= 0.1 and <= 10)) throw new ArgumentOutOfRangeException(nameof(stepM), stepM, "Places lie .1 to 10 metres apart.");
        TeacherSight? best = null;
        var bestKey = (int.MaxValue, true, true, double.MaxValue);
        for (var j = 0; (j + 0.5) * stepM < hall.DepthYM; j++)
        {
            for (var i = 0; (i + 0.5) * stepM < hall.WidthXM; i++)
            {
                var place = new FloorPoint((i + 0.5) * stepM, (j + 0.5) * stepM);
                if (hall.Obstacles.Any(o => o.Place.GapM(place) == 0) || mats.Any(m => m.Covers(need).GapM(place) == 0)) continue;
                var sight = Of(hall, mats, place);
                var isInCircle = mats.Any(m => Math.Sqrt(Square(m.Centre.XM - place.XM) + Square(m.Centre.YM - place.YM)) < m.FallM);
                // Rounded, so that a billionth of a metre does not decide between two corners of a hall.
                var key = (sight.HiddenMats.Count, isInCircle, sight.SpanDeg > 180 + 1e-6, Math.Round(sight.FarthestM, 6));
                if (key.CompareTo(bestKey) < 0) (best, bestKey) = (sight, key);
            }
        }
        return best;
    }

    // All round but for the widest gap between two neighbouring directions.
    private static double SpanOf(FloorPoint place, IReadOnlyList<PlacedMat> mats)
    {
        var ways = mats.Where(m => m.Centre != place).Select(m => Math.Atan2(m.Centre.YM - place.YM, m.Centre.XM - place.XM) * 180 / Math.PI).Order().ToArray();
        return ways.Length == 0 ? 0 : 360 - ways.Zip([.. ways.Skip(1), ways[0] + 360]).Max(p => p.Second - p.First);
    }

    private static double Square(double value) => value * value;
}
