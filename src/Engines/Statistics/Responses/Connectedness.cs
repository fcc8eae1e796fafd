using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>Which pupils and levels are linked by trials. Two that are not linked are compared only by what was assumed.</summary>
public sealed class Connectedness
{
    private readonly int[] _group;
    private Connectedness(int[] group, int pupils, int groups, bool isTwoSided) =>
        (_group, PupilCount, GroupCount, IsTwoSided) = (group, pupils, groups, isTwoSided);

    /// <summary>How many pupils there are, with or without a trial.</summary>
    public int PupilCount { get; }

    /// <summary>How many levels there are, with or without a trial.</summary>
    public int LevelCount => _group.Length - PupilCount;

    /// <summary>How many groups of pupils and levels with trials are not linked with each other; 1 is a class in one piece, 0 has no trial.</summary>
    public int GroupCount { get; }

    /// <summary>
    /// Whether every level can be reached from every other by steps from one that a pupil missed to one the same pupil managed. Only then
    /// would difficulties be finite without any assumption. Source: [Fischer1981] (from memory).
    /// </summary>
    public bool IsTwoSided { get; }

    /// <summary>The group of a pupil, from 0; none without a trial.</summary>
    /// <param name="pupil">An index into the pupils.</param>
    public int? OfPupil(int pupil) => _group[pupil] is >= 0 and var g ? g : null;

    /// <summary>The group of a level, from 0; none without a trial.</summary>
    /// <param name="level">An index into the levels.</param>
    public int? OfLevel(int level) => _group[PupilCount + level] is >= 0 and var g ? g : null;

    internal static Connectedness Of(ResponseData data)
    {
        var (pupils, levels) = (data.Pupils.Count, data.Levels.Count);
        var parent = new int[pupils + levels];
        for (var k = 0; k < parent.Length; k++) parent[k] = k;
        var tried = new bool[parent.Length];
        for (var i = 0; i < pupils; i++)
        {
            foreach (var cell in data.Cells.Of(i)) Link(parent, tried, i, pupils + cell.Level);
            foreach (var trial in data.Cells.Timed(i)) Link(parent, tried, i, pupils + trial.Level);
        }
        var (group, names, count) = (new int[parent.Length], new int[parent.Length], 0);
        for (var k = 0; k < parent.Length; k++)
        {
            if (!tried[k]) group[k] = -1;
            else
            {
                var root = Root(parent, k);
                if (names[root] == 0) names[root] = ++count;
                group[k] = names[root] - 1;
            }
        }
        var known = Enumerable.Range(0, levels).Where(j => tried[pupils + j]).ToList();
        var steps = LevelSteps.Of(data);
        return new(group, pupils, count, known.Count > 0 && Reaches(known, steps.Has) && Reaches(known, (from, to) => steps.Has(to, from)));
    }

    private static void Link(int[] parent, bool[] tried, int pupil, int level)
    {
        parent[Root(parent, pupil)] = Root(parent, level);
        tried[pupil] = tried[level] = true;
    }

    private static int Root(int[] parent, int k)
    {
        while (parent[k] != k) k = parent[k] = parent[parent[k]];
        return k;
    }

    /// <summary>Whether all levels can be reached from the first.</summary>
    private static bool Reaches(List<int> levels, Func<int, int, bool> isStep)
    {
        var (seen, next) = (new HashSet<int> { levels[0] }, new Stack<int>([levels[0]]));
        while (next.TryPop(out var level))
            foreach (var other in levels) if (isStep(level, other) && seen.Add(other)) next.Push(other);
        return seen.Count == levels.Count;
    }
}
