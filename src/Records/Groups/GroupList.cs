using Slantwise.Engines.Planning.Rotations;
using Slantwise.Records.Lessons;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Groups;

/// <summary>A lesson's groups for the wall: first names, mats and stations, and nothing of what was said or wished.</summary>
/// <param name="Groups">The groups in order; empty where none were made.</param>
/// <param name="Stations">The stations in the order in which groups go on; empty where all do the same.</param>
/// <param name="StationMin">How long a group stays at one, in whole minutes; none where nobody said.</param>
public sealed record GroupList(IReadOnlyList<ListedGroup> Groups, IReadOnlyList<string> Stations, int? StationMin)
{
    /// <summary>Loads it.</summary>
    /// <param name="store">Where the plans are.</param>
    /// <param name="record">The lesson.</param>
    /// <param name="cancel">Stops the loading.</param>
    public static async Task<GroupList> LoadAsync(IStore store, LessonRecord record, CancellationToken cancel = default)
    {
        var start = await GroupStart.FindAsync(store, record, cancel);
        var layout = (await store.FindLessonSpaceAsync(record.School.Id, record.Lesson.Id, cancel))?.Layout;
        return Of(record.Pupils, start.Plan, layout is null ? [] : [.. layout.Stations.Select(s => s.Name)], layout?.StationMin);
    }

    /// <summary>Lists a plan's groups.</summary>
    /// <param name="pupils">The class's pupils.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="stations">The stations' names, in order; none where all do the same.</param>
    /// <param name="stationMin">How long a group stays at one, in whole minutes; none where nobody said.</param>
    public static GroupList Of(IReadOnlyList<Pupil> pupils, GroupPlan plan, IReadOnlyList<string> stations, int? stationMin)
    {
        if (plan.Groups.Count == 0) return new([], stations, stationMin);
        var names = pupils.Zip(FirstNames.Of(pupils)).ToDictionary(p => p.First.Id, p => p.Second);
        var first = stations.Count > 0 ? StationRotation.Of(plan.Groups.Count, stations.Count).Stations[0] : null;
        return new(
            [.. plan.Groups.Select((g, i) => new ListedGroup(
                [.. pupils.Where(p => g.PupilIds.Contains(p.Id)).Select(p => names[p.Id])], GroupMats.Text(g.MatNumbers), g.MatNumbers.Count, first is null ? "" : stations[first[i]]))],
            stations, stations.Count > 0 ? stationMin : null);
    }
}
