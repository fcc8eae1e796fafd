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
        var managed = new HashSet<(int Pupil, int Level)>();
        var missed = new HashSet<(int Pupil, int Level)>();
        foreach (var t in data.Trials)
        {
            parent[Root(parent, t.Pupil)] = Root(parent, pupils + t.Level);
            if (t.Successes > 0) managed.Add((t.Pupil, t.Level));
            if (t.Successes < t.Trials) missed.Add((t.Pupil, t.Level));
        }

        var tried = new bool[parent.Length];
        foreach (var t in data.Trials) tried[t.Pupil] = tried[pupils + t.Level] = true;
        var names = new Dictionary<int, int>();
        var group = Enumerable.Range(0, parent.Length).Select(k => !tried[k] ? -1 : names.TryGetValue(Root(parent, k), out var g) ? g : names[Root(parent, k)] = names.Count).ToArray();
        var levels = Enumerable.Range(0, data.Levels.Count).Where(j => tried[pupils + j]).ToList();
        return new(group, pupils, names.Count, levels.Count > 0 && Reaches(levels, managed, missed) && Reaches(levels, missed, managed));
    }

    private static int Root(int[] parent, int k)
    {
        while (parent[k] != k) k = parent[k] = parent[parent[k]];
        return k;
    }

    /// <summary>Whether all levels can be reached from the first: from a level to a pupil by one set, from a pupil to a level by the other.</summary>
    private static bool Reaches(List<int> levels, HashSet<(int Pupil, int Level)> outward, HashSet<(int Pupil, int Level)> onward)
    {
        var byLevel = outward.ToLookup(o => o.Level, o => o.Pupil);
        var byPupil = onward.ToLookup(o => o.Pupil, o => o.Level);
        var (seen, seenPupils, next) = (new HashSet<int> { levels[0] }, new HashSet<int>(), new Stack<int>([levels[0]]));
        while (next.TryPop(out var level))
        {
            foreach (var pupil in byLevel[level])
            {
                if (!seenPupils.Add(pupil)) continue;
                foreach (var other in byPupil[pupil]) if (seen.Add(other)) next.Push(other);
            }
        }
        return seen.Count == levels.Count;
    }
}
