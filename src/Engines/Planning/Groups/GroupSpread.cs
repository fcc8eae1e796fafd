namespace Slantwise.Engines.Planning.Groups;

/// <summary>Differences in experience within and between groups, kept up while pupils come and go.</summary>
internal sealed class GroupSpread
{
    private readonly double?[] _experience;
    private readonly double[] _sum;
    private readonly double[] _square;
    private readonly int[] _count;

    public GroupSpread(GroupRequest request)
    {
        var known = request.Pupils.Where(p => p.ExperienceFraction is not null).Select(p => p.ExperienceFraction!.Value).ToList();
        var mean = known.Count > 0 ? known.Average() : 0;
        _experience = [.. request.Pupils.Select(p => p.ExperienceFraction - mean)];
        TotalSquares = _experience.Sum(e => e * e ?? 0);
        (_sum, _square, _count) = (new double[request.Sizes.Count], new double[request.Sizes.Count], new int[request.Sizes.Count]);
    }

    /// <summary>The squares around the mean of all whose experience is known.</summary>
    public double TotalSquares { get; }

    /// <summary>The squares around the groups' own means, of those placed.</summary>
    public double WithinSquares
    {
        get
        {
            double within = 0;
            for (var g = 0; g < _count.Length; g++)
                if (_count[g] > 0) within += Math.Max(0, _square[g] - _sum[g] * _sum[g] / _count[g]);
            return within;
        }
    }

    public void Put(int pupil, int group, int sign)
    {
        if (_experience[pupil] is not { } e) return;
        _sum[group] += sign * e;
        _square[group] += sign * e * e;
        _count[group] += sign;
    }

    /// <summary>The share of the differences that lies between groups, 0 to 1; none where nobody's experience is known or all are alike.</summary>
    public static double? BetweenFraction(GroupRequest request, IReadOnlyList<int> groupOf)
    {
        var spread = new GroupSpread(request);
        if (spread.TotalSquares < 1e-12) return null;
        for (var p = 0; p < groupOf.Count; p++) spread.Put(p, groupOf[p], 1);
        return Math.Clamp(1 - spread.WithinSquares / spread.TotalSquares, 0, 1);
    }
}
