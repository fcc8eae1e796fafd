using Slantwise.Engines.Statistics.Orders;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Orders;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>Whom the levels of one task on a sheet include, before it is printed. To the teacher only; no pupil is shown or told a level.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="Pupils">Every current pupil, by label.</param>
/// <param name="Levels">The levels of the sheet, in its order, with whom they are for.</param>
/// <param name="Whole">The numbers for the class.</param>
/// <param name="Addition">Which level would include most of those left out; none where nobody is left out.</param>
/// <param name="TrialCount">Trials behind it; with 0 it rests on the teacher's order and wide assumptions alone.</param>
public sealed record TaskReach(
    Guid TaskId, IReadOnlyList<ReachedPupil> Pupils, IReadOnlyList<LevelReach> Levels, SheetReach Whole, LevelToAdd? Addition, int TrialCount)
{
    // A level that is in nobody's band with a chance of nine in ten.
    internal const double UnneededFraction = .1;

    /// <summary>Pupils for whom the sheet probably has no level, by label.</summary>
    public IReadOnlyList<ReachedPupil> LeftOut => [.. Pupils.Where(p => p.IsLeftOut)];

    /// <summary>Places of levels, from 0, that nobody is likely to need.</summary>
    public IReadOnlyList<int> UnneededLevels => [.. Levels.Select((level, i) => (level, i)).Where(l => l.level.NeededFraction < UnneededFraction).Select(l => l.i)];

    /// <summary>Each level of the sheet beside the next as the model orders them, without counts of pupils; a hypothesis beside the sheet's.</summary>
    public IReadOnlyList<OrderedPair> Neighbours { get; init; } = [];

    /// <summary>The reach of a task's levels.</summary>
    /// <param name="task">As it would be on the sheet.</param>
    /// <param name="candidates">Levels that could be added to it; may be empty.</param>
    /// <param name="pupils">The class's pupils, any order.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="restrictions">The pupils' restrictions.</param>
    /// <param name="day">The day of the lesson.</param>
    /// <param name="chances">What is believed; it must have been fitted with <paramref name="task"/> and the candidates of it.</param>
    /// <param name="band">The chances of success that count as included.</param>
    public static TaskReach Of(
        SheetTask task, IReadOnlyList<CandidateLevel> candidates, IReadOnlyList<Pupil> pupils, SafetyPolicy policy, IReadOnlyList<Restriction> restrictions,
        DateOnly day, ClassChances chances, ReachBand band)
    {
        Level[] all = [.. task.Levels, .. candidates.Select(c => c.Level)];
        var lesson = chances.TrialCount == 0 ? 0 : chances.LatestLesson + 1;
        var ordered = pupils.OrderBy(p => p.Label, StringComparer.InvariantCultureIgnoreCase).ThenBy(p => p.Code, StringComparer.Ordinal).ToList();
        var seen = ordered.Select(p => Outlook.Of(p, all, policy, restrictions.Where(r => r.PupilId == p.Id), day, chances, lesson)).ToList();
        var whole = SheetReach.Of([.. seen.Select(s => s.Of(task.Levels.Count))], band);

        var reached = ordered.Select((p, i) => new ReachedPupil(
            p.Id, p.Label, whole.Pupils[i], seen[i].Of(task.Levels.Count).Levels, seen[i].TrialCount, seen[i].IsMostlyAssumed)).ToList();
        return new TaskReach(task.TaskId, reached, whole.Levels, whole, AdditionOf(task, candidates, seen, reached, band), chances.TrialCount)
        {
            Neighbours = [.. task.Levels.Zip(task.Levels.Skip(1)).Select((pair, i) => new OrderedPair(
                i + 1, i + 2, new LevelPair(i, i + 1, 0, 0, 0), 0, chances.Contrast(pair.Second.Id, pair.First.Id), []))],
        };
    }

    /// <summary>The reach of one of the levels alone, with the range of its number.</summary>
    /// <param name="place">The level's place, from 0.</param>
    /// <param name="band">The band the reach was found for.</param>
    /// <returns>As the whole, for a sheet that had this level only.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such level.</exception>
    public SheetReach AtLevel(int place, ReachBand band)
    {
        if (place < 0 || place >= Levels.Count) throw new ArgumentOutOfRangeException(nameof(place), place, $"A place among {Levels.Count} levels, from 0.");
        // With one level it does not matter which part of the uncertainty the pupil's other levels would share.
        return SheetReach.Of([.. Pupils.Select(p => new PupilOutlook(0, [p.Levels[place]]))], band);
    }

    private static LevelToAdd? AdditionOf(SheetTask task, IReadOnlyList<CandidateLevel> candidates, List<Outlook> seen, List<ReachedPupil> reached, ReachBand band)
    {
        if (candidates.Count == 0 || reached.All(p => !p.IsLeftOut)) return null;
        // Only those who are left out: a level for those who have one already is not what is asked for.
        var left = seen.Where((_, i) => reached[i].IsLeftOut).Select(s => s.Whole).ToList();
        var best = ReachAddition.Best(left, task.Levels.Count, 1, band);
        var others = reached.Where(p => !p.IsLeftOut).Sum(p => p.Reach.IncludedFraction);
        return new LevelToAdd([.. best.Candidates.Select(c => candidates[c].Level)], others + best.IncludedCount, best.IsExact, candidates.Count);
    }
}
