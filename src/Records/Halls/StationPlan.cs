using Slantwise.Engines.Planning.Rotations;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Halls;

/// <summary>Who is at which station when.</summary>
/// <param name="Rounds">As many as stations, in their order.</param>
/// <param name="GroupCount">How many groups go round.</param>
/// <param name="NeededMin">How long all rounds take together.</param>
/// <param name="PracticeMin">How long the lesson practises; 0 where it plans none.</param>
/// <param name="Warnings">What to know, in the order of <see cref="StationWarning"/>.</param>
public sealed record StationPlan(IReadOnlyList<StationRound> Rounds, int GroupCount, int NeededMin, int PracticeMin, IReadOnlyList<StationWarning> Warnings)
{
    /// <summary>The rotation of a layout.</summary>
    /// <param name="layout">With its stations.</param>
    /// <param name="phases">The lesson's phases; may be empty.</param>
    /// <param name="groupCount">Groups made for the lesson, 1 to 100; none for as many as stations.</param>
    /// <returns>None without stations. Rounds follow each other within practice; changing places takes no time of its own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Groups not of 1 to 100.</exception>
    public static StationPlan? Of(HallLayout layout, IReadOnlyList<LessonPhase> phases, int? groupCount)
    {
        if (layout.Stations.Count == 0) return null;
        if (groupCount is < 1 or > 100) throw new ArgumentOutOfRangeException(nameof(groupCount), groupCount, "There are 1 to 100 groups.");
        var each = layout.StationMin ?? UsualMin(layout.Stations.Count, phases);
        var groups = groupCount ?? layout.Stations.Count;
        var rotation = StationRotation.Of(groups, layout.Stations.Count);
        var practice = Practice(phases);
        var practiceMin = practice.Sum(p => p.EndMin - p.StartMin);
        var rounds = rotation.Stations.Select((stations, r) =>
        {
            var (start, startPhase) = At(practice, r * each, isStart: true);
            var (end, endPhase) = At(practice, (r + 1) * each, isStart: false);
            return new StationRound(start, end, stations, startPhase != endPhase, practice.Count > 0 && (r + 1) * each > practiceMin);
        }).ToList();
        var needed = layout.Stations.Count * each;
        var withMats = layout.Mats.Select(m => m.Station).ToHashSet();
        return new(rounds, groups, needed, practiceMin, [.. Warnings()]);

        IEnumerable<StationWarning> Warnings()
        {
            if (practice.Count == 0) yield return StationWarning.NoPractice;
            else if (needed > practiceMin) yield return StationWarning.TooLong;
            if (rounds.Any(r => r is { IsInterrupted: true, IsLate: false })) yield return StationWarning.Interrupted;
            if (rotation.MostGroupsAtOnce > 1) yield return StationWarning.Shared;
            if (layout.Mats.Count > 0 && Enumerable.Range(1, layout.Stations.Count).Any(s => !withMats.Contains(s))) yield return StationWarning.WithoutMat;
        }
    }

    /// <summary>Minutes a station where nobody said: practice shared out, 1 to 60; 5 without a practice planned, a working rule.</summary>
    /// <param name="stationCount">1 or more.</param>
    /// <param name="phases">The lesson's phases.</param>
    public static int UsualMin(int stationCount, IReadOnlyList<LessonPhase> phases)
    {
        var practiceMin = phases.Where(p => p.Kind == PhaseKind.Activity).Sum(p => p.DurationMin);
        return practiceMin == 0 ? 5 : Math.Clamp(practiceMin / stationCount, 1, 60);
    }

    private static List<(int StartMin, int EndMin)> Practice(IReadOnlyList<LessonPhase> phases)
    {
        var (at, practice) = (0, new List<(int StartMin, int EndMin)>());
        foreach (var phase in phases)
        {
            if (phase.Kind == PhaseKind.Activity)
            {
                if (practice.Count > 0 && practice[^1].EndMin == at) practice[^1] = (practice[^1].StartMin, at + phase.DurationMin);
                else practice.Add((at, at + phase.DurationMin));
            }
            at += phase.DurationMin;
        }
        return practice;
    }

    // The minute of the lesson after so much practice. What begins when a phase ends begins with the next one.
    private static (int Min, int Phase) At(List<(int StartMin, int EndMin)> practice, int practised, bool isStart)
    {
        for (var i = 0; i < practice.Count; i++)
        {
            var length = practice[i].EndMin - practice[i].StartMin;
            if (isStart ? practised < length : practised <= length) return (practice[i].StartMin + practised, i);
            practised -= length;
        }
        return practice.Count == 0 ? (practised, 0) : (practice[^1].EndMin + practised, practice.Count - 1);
    }
}
