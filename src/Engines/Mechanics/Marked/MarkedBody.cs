namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>The marks of one picture put together to a body: every point of it, as weights of what was marked.</summary>
/// <remarks>
/// A point that was left out follows from its neighbours, with a standard deviation that is our own estimate of how wrong that can
/// be; without neighbours a limb is taken to be where the other one is.
/// </remarks>
internal sealed class MarkedBody
{
    private const double HeadOfNeck = BodyLengths.HeadH / (BodyLengths.HeadH + BodyLengths.NeckH);
    private readonly Dictionary<(Landmark Landmark, Side Side), int> _index = [];

    private MarkedBody(IReadOnlyList<MarkedPoint> marks, IEnumerable<PointPx> others)
    {
        var (points, counts) = (new List<PointPx>(), new List<int>());
        foreach (var same in marks.GroupBy(m => (m.Landmark, m.Side)))
        {
            _index[same.Key] = points.Count;
            points.Add(1.0 / same.Count() * same.Aggregate(new PointPx(0, 0), (sum, m) => sum + m.At));
            counts.Add(same.Count());
        }
        OthersFrom = points.Count;
        points.AddRange(others);
        counts.AddRange(Enumerable.Repeat(1, points.Count - counts.Count));
        (Points, ClickCounts) = (points, counts);
    }

    /// <summary>Every place that was clicked: points of the body, then others.</summary>
    public IReadOnlyList<PointPx> Points { get; }

    /// <summary>How often each was clicked.</summary>
    public IReadOnlyList<int> ClickCounts { get; }

    /// <summary>The index of the first other.</summary>
    public int OthersFrom { get; }

    public static MarkedBody Of(IReadOnlyList<MarkedPoint> marks, IEnumerable<PointPx> others) => new(marks, others);

    public MarkedPlace Other(int number) => MarkedPlace.Of(Points.Count, OthersFrom + number);

    public bool HasMark(Landmark landmark) => _index.Keys.Any(k => k.Landmark == landmark);

    /// <summary>Whether one mark stands for both sides, and neither has its own.</summary>
    public bool IsBoth(Landmark landmark) => _index.ContainsKey((landmark, Side.Middle))
        && !_index.ContainsKey((landmark, Side.Left)) && !_index.ContainsKey((landmark, Side.Right));

    /// <summary>The mark of a point, its own or the one that stands for both sides; none where it was left out.</summary>
    public MarkedPlace? Mark(Landmark landmark, Side side) =>
        _index.TryGetValue((landmark, side), out var own) || _index.TryGetValue((landmark, Side.Middle), out own)
            ? MarkedPlace.Of(Points.Count, own)
            : null;

    /// <summary>A point of the body, marked or guessed; the middle of both for a paired one without a side.</summary>
    public MarkedPlace Place(Landmark landmark, Side side) => landmark switch
    {
        Landmark.Crown => Mark(landmark, Side.Middle) ?? MarkedPlace.Sum(
            (1, Place(Landmark.Jaw, Side.Middle)),
            (BodyLengths.HeadH / BodyLengths.HipToShoulderH, Place(Landmark.Shoulder, Side.Middle)),
            (-BodyLengths.HeadH / BodyLengths.HipToShoulderH, Place(Landmark.Hip, Side.Middle))).Guessed(MarkedGuess.Head, .05),
        Landmark.Jaw => Mark(landmark, Side.Middle)
            ?? MarkedPlace.Between(Mark(Landmark.Crown, Side.Middle)!, Place(Landmark.Shoulder, Side.Middle), HeadOfNeck).Guessed(MarkedGuess.Head, .03),
        Landmark.Waist => Mark(landmark, Side.Middle)!,
        _ when side == Side.Middle => MarkedPlace.Between(Place(landmark, Side.Left), Place(landmark, Side.Right), .5),
        Landmark.Shoulder or Landmark.Hip => Mark(landmark, side) ?? Mark(landmark, Opposite(side))!,
        Landmark.Elbow or Landmark.Wrist or Landmark.Fingertip => Arm(landmark, side),
        _ => Leg(landmark, side),
    };

    private MarkedPlace Arm(Landmark landmark, Side side)
    {
        var guess = side == Side.Left ? MarkedGuess.LeftArm : MarkedGuess.RightArm;
        if (Mark(landmark, side) is { } marked) return marked;
        var (elbow, wrist, tip) = (Mark(Landmark.Elbow, side), Mark(Landmark.Wrist, side), Mark(Landmark.Fingertip, side));
        var shoulder = Place(Landmark.Shoulder, side);
        if (elbow is null && wrist is null && tip is null)
        {
            return HasAny(Opposite(side), Landmark.Elbow, Landmark.Wrist, Landmark.Fingertip)
                ? Arm(landmark, Opposite(side)).Guessed(guess, .05)
                // Anywhere within reach of the shoulder.
                : shoulder.Guessed(guess, landmark == Landmark.Elbow ? .12 : .20);
        }
        return landmark switch
        {
            Landmark.Elbow => MarkedPlace.Between(shoulder, wrist ?? tip!, .5).Guessed(guess, .04),
            Landmark.Wrist when tip is not null => tip.Guessed(guess, .07),
            Landmark.Wrist => MarkedPlace.Between(shoulder, elbow!, 1 + BodyLengths.ForearmH / BodyLengths.UpperArmH).Guessed(guess, .10),
            _ => Arm(Landmark.Wrist, side).Guessed(guess, .10),
        };
    }

    private MarkedPlace Leg(Landmark landmark, Side side)
    {
        var guess = side == Side.Left ? MarkedGuess.LeftLeg : MarkedGuess.RightLeg;
        if (Mark(landmark, side) is { } marked) return marked;
        var (knee, ankle) = (Mark(Landmark.Knee, side), Mark(Landmark.Ankle, side));
        var foot = Mark(Landmark.Heel, side) ?? Mark(Landmark.Toe, side);
        if (knee is null && ankle is null && foot is null) return Leg(landmark, Opposite(side)).Guessed(guess, .05);
        var hip = Place(Landmark.Hip, side);
        return landmark switch
        {
            Landmark.Knee => MarkedPlace.Between(hip, ankle ?? foot!, .5).Guessed(guess, .04),
            Landmark.Ankle when foot is not null => foot.Guessed(guess, .05),
            Landmark.Ankle => MarkedPlace.Between(hip, knee!, 1 + BodyLengths.ShankH / BodyLengths.ThighH).Guessed(guess, .12),
            _ => Leg(Landmark.Ankle, side).Guessed(guess, .06),
        };
    }

    private bool HasAny(Side side, params ReadOnlySpan<Landmark> landmarks)
    {
        foreach (var landmark in landmarks)
            if (Mark(landmark, side) is not null) return true;
        return false;
    }

    private static Side Opposite(Side side) => side == Side.Left ? Side.Right : Side.Left;
}
