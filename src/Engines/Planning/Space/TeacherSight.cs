namespace Slantwise.Engines.Planning.Space;

/// <summary>What a teacher sees from a place, looking round: mats whose middle no high obstacle hides. Pupils hide nothing.</summary>
/// <param name="Place">Where the teacher stands.</param>
/// <param name="HiddenMats">Mats whose middle is hidden, as places in the list.</param>
/// <param name="SeenFraction">The share of the mats that is seen, 0 to 1; 1 where there is none.</param>
/// <param name="FarthestM">The distance to the farthest mat's middle; 0 where there is none.</param>
public sealed record TeacherSight(FloorPoint Place, IReadOnlyList<int> HiddenMats, double SeenFraction, double FarthestM)
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
        return new(place, hidden, mats.Count == 0 ? 1 : 1 - (double)hidden.Length / mats.Count, farthest);
    }

    /// <summary>The place from which most is seen; of several such the one nearest to its farthest mat; then the first from the front left.</summary>
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
        for (var j = 0; (j + 0.5) * stepM < hall.DepthYM; j++)
        {
            for (var i = 0; (i + 0.5) * stepM < hall.WidthXM; i++)
            {
                var place = new FloorPoint((i + 0.5) * stepM, (j + 0.5) * stepM);
                if (hall.Obstacles.Any(o => o.Place.GapM(place) == 0) || mats.Any(m => m.Covers(need).GapM(place) == 0)) continue;
                var sight = Of(hall, mats, place);
                if (best is null || sight.HiddenMats.Count < best.HiddenMats.Count
                    || (sight.HiddenMats.Count == best.HiddenMats.Count && sight.FarthestM < best.FarthestM - 1e-9)) best = sight;
            }
        }
        return best;
    }

    private static double Square(double value) => value * value;
}
