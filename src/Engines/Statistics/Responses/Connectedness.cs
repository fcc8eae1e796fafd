using System.Collections;
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
        var pupils = data.Pupils.Count;
        var parent = Enumerable.Range(0, pupils + data.Levels.Count).ToArray();
        var tried = new bool[parent.Length];
        foreach (var t in data.Trials)
        {
            parent[Root(parent, t.Pupil)] = Root(parent, pupils + t.Level);
            tried[t.Pupil] = tried[pupils + t.Level] = true;
        }
        var names = new Dictionary<int, int>();
        var group = Enumerable.Range(0, parent.Length).Select(k => !tried[k] ? -1 : names.TryGetValue(Root(parent, k), out var g) ? g : names[Root(parent, k)] = names.Count).ToArray();
        var levels = Enumerable.Range(0, data.Levels.Count).Where(j => tried[pupils + j]).ToList();
        var steps = Steps(data);
        return new(group, pupils, names.Count, levels.Count > 0 && Reaches(levels, (from, to) => steps[from][to]) && Reaches(levels, (from, to) => steps[to][from]));
    }

    private static int Root(int[] parent, int k)
    {
        while (parent[k] != k) k = parent[k] = parent[parent[k]];
        return k;
    }

    /// <summary>For each level the levels that somebody managed who missed this one.</summary>
    private static BitArray[] Steps(ResponseData data)
    {
        var byPupil = TrialsByPupil.Of(data);
        var steps = Enumerable.Range(0, data.Levels.Count).Select(_ => new BitArray(data.Levels.Count)).ToArray();
        var managed = new BitArray(data.Levels.Count);
        for (var i = 0; i < data.Pupils.Count; i++)
        {
            managed.SetAll(false);
            foreach (var k in byPupil.Of(i)) if (data.Trials[k].Successes > 0) managed[data.Trials[k].Level] = true;
            foreach (var k in byPupil.Of(i)) if (data.Trials[k].Successes < data.Trials[k].Trials) steps[data.Trials[k].Level].Or(managed);
        }
        return steps;
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
