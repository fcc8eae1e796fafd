namespace Slantwise.Engines.Marks;

/// <summary>
/// Takes black squares of a picture for the corners of a form, in every way that fits, and keeps the ways in which the other anchors fit, too. Where a
/// corner is missing, the anchor nearest to it on its edge stands in.
/// </summary>
/// <remarks>
/// Source: [FischlerBolles1981] a map from as few points as it needs, judged by how many others agree; here all sets that fit are tried, in a set order.
/// </remarks>
internal sealed class FormSearch
{
    private const int GuessesAtMost = 40_000;
    private const long LooksAtMost = 20_000_000;
    private const int SquaresAtMost = 2_000;
    private const int KeptAtMost = 3;

    private readonly SheetLayout _layout;
    private readonly IReadOnlyList<DarkSquare> _squares;
    private readonly SquareGrid _grid;
    private readonly double _cellPx;
    private readonly List<FormGuess> _kept = [];
    private int _guessCount;
    private long _lookCount;

    public FormSearch(SheetLayout layout, IEnumerable<DarkSquare> squares, double cellPx)
    {
        _layout = layout;
        _cellPx = cellPx;
        _squares = [.. squares.OrderByDescending(s => s.SidePx).Take(SquaresAtMost)];
        _grid = new(_squares, cellPx);
    }

    /// <summary>Up to three guesses, the best first.</summary>
    public IReadOnlyList<FormGuess> Near(CodePose pose)
    {
        foreach (var corners in Corners())
        {
            var choices = corners.Select(i => NearPose(_layout.Anchors[i], pose)).ToArray();
            foreach (var a in choices[0])
                foreach (var b in choices[1])
                    foreach (var c in choices[2])
                        foreach (var d in choices[3])
                            if (!Try(corners, [a, b, c, d], g => AgreesWith(g, pose))) return _kept;
            if (IsDone()) break;
        }
        return _kept;
    }

    /// <summary>Up to three guesses by the squares alone, the best first; those that a code contradicts are left out.</summary>
    public IReadOnlyList<FormGuess> Anywhere(CodePose? pose = null)
    {
        foreach (var corners in Corners())
        {
            // The hollow square first, for there are few; without it the corner opposite to the one that is missing.
            var hollow = Array.FindIndex(corners, i => _layout.Anchors[i].IsHollow);
            var first = hollow >= 0 ? hollow : Math.Max(0, (Array.FindIndex(corners, i => i >= 4) + 2) % 4);
            foreach (var seed in _squares.Where(s => s.IsHollow == _layout.Anchors[corners[first]].IsHollow))
                if (_lookCount > LooksAtMost || !TryFrom(corners, first, seed, pose)) return _kept;
            if (IsDone()) break;
        }
        return _kept;
    }

    private bool TryFrom(int[] corners, int first, DarkSquare seed, CodePose? pose)
    {
        Span<DarkSquare> four = new DarkSquare[4];
        var (next, opposite, before) = ((first + 1) % 4, (first + 2) % 4, (first + 3) % 4);
        var (start, turned, across) = (_layout.Anchors[corners[first]], _layout.Anchors[corners[next]], _layout.Anchors[corners[before]]);
        var far = _layout.Anchors[corners[opposite]];
        var scale = seed.SidePx / start.SizeMm;
        var ones = Beside(seed, start, turned, scale);
        var others = Beside(seed, start, across, scale);
        foreach (var one in ones)
        {
            foreach (var other in others)
            {
                if (!IsCorner(seed, one, other)) continue;
                if (_lookCount > LooksAtMost) return false;
                // A parallelogram is the first idea of the fourth corner.
                var at = new PixelPoint(one.XPx + other.XPx - seed.XPx, one.YPx + other.YPx - seed.YPx);
                var reachPx = .3 * double.Hypot(one.XPx - other.XPx, one.YPx - other.YPx);
                foreach (var last in Closest(_squares.Where(s => s.IsHollow == far.IsHollow && s.SidePx > .5 * scale * far.SizeMm && s.SidePx < 2 * scale * far.SizeMm), at, reachPx, 5))
                {
                    (four[first], four[next], four[opposite], four[before]) = (seed, one, last, other);
                    if (!Try(corners, four, g => pose is null || AgreesWith(g, pose))) return false;
                }
            }
        }
        return true;
    }

    // False once enough was tried: a picture of nothing but squares must not take for ever.
    private bool Try(int[] corners, ReadOnlySpan<DarkSquare> four, Func<FormGuess, bool> isWanted)
    {
        if (_guessCount++ >= GuessesAtMost || _lookCount > LooksAtMost) return false;
        Span<PlacedPoint> points = stackalloc PlacedPoint[4];
        for (var i = 0; i < 4; i++) points[i] = new(_layout.Anchors[corners[i]].XMm, _layout.Anchors[corners[i]].YMm, four[i].XPx, four[i].YPx);
        if (FormGuess.Of(_layout, points, _grid, _cellPx) is not { } guess || guess.Score < .45 * _layout.Anchors.Count || !isWanted(guess)) return true;
        var like = _kept.FindIndex(k => k.IsLike(guess, _layout));
        if (like >= 0 && _kept[like].Score >= guess.Score) return true;
        if (like >= 0) _kept.RemoveAt(like);
        _kept.Add(guess);
        _kept.Sort((a, b) => b.Score.CompareTo(a.Score));
        if (_kept.Count > KeptAtMost) _kept.RemoveAt(KeptAtMost);
        return true;
    }

    private bool IsDone() => _kept.Count > 0 && _kept[0].Score > _layout.Anchors.Count - .8;

    private static bool AgreesWith(FormGuess guess, CodePose pose) => pose.Finders.All(f =>
    {
        var at = guess.Flat.At(f.XMm, f.YMm);
        return double.Hypot(at.XPx - f.XPx, at.YPx - f.YPx) < 6 * pose.Scale;
    });

    // The four corners; then with one replaced, then with two.
    private IEnumerable<int[]> Corners()
    {
        yield return [0, 1, 2, 3];
        var stand = Enumerable.Range(0, 4).Select(StandIn).ToArray();
        for (var i = 0; i < 4; i++)
            if (stand[i] is { } one) yield return Replaced([0, 1, 2, 3], i, one);
        for (var i = 0; i < 4; i++)
            for (var j = i + 1; j < 4; j++)
                if (stand[i] is { } one && stand[j] is { } two && one != two) yield return Replaced(Replaced([0, 1, 2, 3], i, one), j, two);
    }

    private static int[] Replaced(int[] corners, int at, int by) => [.. corners.Select((c, i) => i == at ? by : c)];

    private int? StandIn(int corner) => Enumerable.Range(4, _layout.Anchors.Count - 4)
        .OrderBy(i => double.Hypot(_layout.Anchors[i].XMm - _layout.Anchors[corner].XMm, _layout.Anchors[i].YMm - _layout.Anchors[corner].YMm))
        .Select(i => (int?)i).FirstOrDefault();

    // A slanted view moves what is far from the code by up to a third of its distance.
    private IReadOnlyList<DarkSquare> NearPose(Anchor anchor, CodePose pose)
    {
        var (x, y) = pose.Middle;
        var farMm = double.Hypot(anchor.XMm - x, anchor.YMm - y);
        var sidePx = anchor.SizeMm * pose.Scale;
        return Closest(_squares.Where(s => s.IsHollow == anchor.IsHollow && s.SidePx > .5 * sidePx && s.SidePx < 2 * sidePx),
            pose.At(anchor.XMm, anchor.YMm), (6 + .35 * farMm) * pose.Scale, farMm < 60 ? 3 : 12);
    }

    private List<DarkSquare> Beside(DarkSquare seed, Anchor start, Anchor other, double scale)
    {
        var lengthPx = double.Hypot(other.XMm - start.XMm, other.YMm - start.YMm) * scale;
        var sidePx = other.SizeMm * scale;
        _lookCount += _squares.Count;
        return [.. _squares.Where(s => s != seed && s.IsHollow == other.IsHollow && s.SidePx > .45 * sidePx && s.SidePx < 2.2 * sidePx)
            .Select(s => (Square: s, Fraction: double.Hypot(s.XPx - seed.XPx, s.YPx - seed.YPx) / lengthPx))
            .Where(s => s.Fraction is > .5 and < 2).OrderBy(s => Math.Abs(Math.Log(s.Fraction))).Take(40).Select(s => s.Square)];
    }

    private static bool IsCorner(DarkSquare seed, DarkSquare one, DarkSquare other)
    {
        double ax = one.XPx - seed.XPx, ay = one.YPx - seed.YPx, bx = other.XPx - seed.XPx, by = other.YPx - seed.YPx;
        return ax * by - ay * bx > .75 * double.Hypot(ax, ay) * double.Hypot(bx, by);
    }

    private List<DarkSquare> Closest(IEnumerable<DarkSquare> squares, PixelPoint at, double reachPx, int most)
    {
        _lookCount += _squares.Count;
        return [.. squares.Select(s => (Square: s, Off: double.Hypot(s.XPx - at.XPx, s.YPx - at.YPx))).Where(s => s.Off < reachPx)
            .OrderBy(s => s.Off).Take(most).Select(s => s.Square)];
    }
}
