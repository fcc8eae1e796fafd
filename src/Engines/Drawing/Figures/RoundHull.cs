namespace Slantwise.Engines.Drawing.Figures;

/// <summary>The tight skin around balls: arcs where a ball bulges, straight where it is stretched from one to the next.</summary>
internal static class RoundHull
{
    private const double TouchingMm = 1e-7;

    private readonly record struct Edge(int From, int To, double NormalRad, Flat Normal);

    /// <summary>Adds the outline around balls, always turning the same way, so that overlapping hulls of one path become one shape.</summary>
    public static void Add(FigurePath path, params ReadOnlySpan<Round> rounds)
    {
        Span<Round> kept = stackalloc Round[rounds.Length];
        kept = kept[..Outer(rounds, kept)];
        var edges = kept.Length == 1 ? [] : Edges(kept);
        if (edges.Count < 2)
        {
            path.Ellipse(Flat.Of(kept[0]), new(kept[0].RadiusMm, 0), new(0, kept[0].RadiusMm));
            return;
        }
        for (var i = 0; i < edges.Count; i++)
        {
            var (edge, next) = (edges[i], edges[(i + 1) % edges.Count]);
            var (from, to) = (kept[edge.From], kept[edge.To]);
            var start = Flat.Of(from) + from.RadiusMm * edge.Normal;
            var end = Flat.Of(to) + to.RadiusMm * edge.Normal;
            if (i == 0) path.MoveTo(start.X, start.Y);
            path.LineTo(end.X, end.Y);
            var turnRad = next.NormalRad - edge.NormalRad;
            if (turnRad < 0) turnRad += 2 * Math.PI;
            path.Arc(Flat.Of(to), new(to.RadiusMm, 0), new(0, to.RadiusMm), edge.NormalRad, edge.NormalRad + turnRad);
        }
        path.Close();
    }

    // Balls that lie inside another one, or twice at one place, have no part in the skin.
    private static int Outer(ReadOnlySpan<Round> rounds, Span<Round> kept)
    {
        var count = 0;
        for (var i = 0; i < rounds.Length; i++)
        {
            var isInside = false;
            for (var j = 0; j < rounds.Length && !isInside; j++)
            {
                if (i == j) continue;
                var overMm = (Flat.Of(rounds[i]) - Flat.Of(rounds[j])).Length + rounds[i].RadiusMm - rounds[j].RadiusMm;
                isInside = overMm < -TouchingMm || (overMm <= TouchingMm && (rounds[i].RadiusMm < rounds[j].RadiusMm - TouchingMm || j < i));
            }
            if (!isInside) kept[count++] = rounds[i];
        }
        return count;
    }

    // Straight pieces that leave every ball on their left, in the order of their directions.
    private static List<Edge> Edges(ReadOnlySpan<Round> rounds)
    {
        var edges = new List<Edge>();
        for (var i = 0; i < rounds.Length; i++)
            for (var j = 0; j < rounds.Length; j++)
                if (i != j && Tangent(rounds, i, j) is { } edge) edges.Add(edge);
        edges.Sort((a, b) => a.NormalRad.CompareTo(b.NormalRad));
        return edges;
    }

    private static Edge? Tangent(ReadOnlySpan<Round> rounds, int i, int j)
    {
        var between = Flat.Of(rounds[j]) - Flat.Of(rounds[i]);
        var longMm = between.Length;
        var cosine = (rounds[i].RadiusMm - rounds[j].RadiusMm) / longMm;
        if (Math.Abs(cosine) >= 1) return null;
        var along = 1 / longMm * between;
        var normal = cosine * along + Math.Sqrt(1 - cosine * cosine) * new Flat(along.Y, -along.X);
        for (var k = 0; k < rounds.Length; k++)
        {
            if (k == i || k == j) continue;
            var to = Flat.Of(rounds[k]) - Flat.Of(rounds[i]);
            var outMm = Flat.Dot(normal, to) + rounds[k].RadiusMm - rounds[i].RadiusMm;
            if (outMm > TouchingMm) return null;
            // Of balls that touch one line only the outermost two carry it.
            var atMm = Flat.Dot(along, to);
            if (outMm > -TouchingMm && (atMm < 0 || atMm > longMm)) return null;
        }
        return new Edge(i, j, Math.Atan2(normal.Y, normal.X), normal);
    }
}
