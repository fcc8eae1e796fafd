using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;

namespace Slantwise.Records.Halls;

/// <summary>What a layout begins with, and mats laid out in it. Sizes and distances are common practice without a source; every one can be changed.</summary>
public static class SpaceProposal
{
    /// <summary>A usual mat's long side.</summary>
    public const double MatLengthM = 1.83;

    /// <summary>A usual mat's short side.</summary>
    public const double MatWidthM = 1.22;

    /// <summary>Between two mats: somebody can pass.</summary>
    public const double ClearM = 1;

    /// <summary>To walls and things.</summary>
    public const double WallClearM = 1;

    /// <summary>Mats at most.</summary>
    public const int MostMats = 100;

    /// <summary>The layout that nobody has touched: usual sizes, no mat, the class's age as in its last lesson.</summary>
    /// <param name="before">The class's last layout; none where there is none.</param>
    public static HallLayout Start(HallLayout? before) => before is null
        ? new() { MatLengthM = MatLengthM, MatWidthM = MatWidthM, ClearM = ClearM, WallClearM = WallClearM }
        : before with { Mats = [], TeacherXM = null, TeacherYM = null, Stations = [], StationMin = null };

    /// <summary>How many mats a lesson needs: as planned, else one for two pupils; 1 to 100.</summary>
    /// <param name="record">The lesson.</param>
    public static int MatCount(LessonRecord record) => Math.Clamp(
        record.Lesson.MatCount is > 0 and var planned ? planned : (record.Pupils.Count + PlanningDefaults.PupilsAMat - 1) / PlanningDefaults.PupilsAMat, 1, MostMats);

    /// <summary>Lays out mats anew, shares them out among the stations and puts the teacher where most is seen.</summary>
    /// <param name="hall">The hall.</param>
    /// <param name="layout">Sizes, distances and stations; its mats are taken away.</param>
    /// <param name="count">How many mats, 0 to 100.</param>
    /// <param name="falls">The tasks' circles.</param>
    /// <returns>Nothing in it clashes. Fewer mats than asked for where no more were placed; none of them where the hall has no room.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Mats not of 0 to 100, or a hall or distance outside its range.</exception>
    public static HallLayout LaidOut(SchoolHall hall, HallLayout layout, int count, IReadOnlyList<TaskFall> falls)
    {
        // Any station may come to lie anywhere: each mat is given room for the widest circle first.
        var widest = Widest(layout, falls);
        var laid = MatLayout.Of(hall.OnFloor(), layout.Need(), [.. Enumerable.Repeat(widest, Math.Max(0, count))]);
        var mats = laid.Mats.Select(m => new LaidMat(m.Centre.XM, m.Centre.YM, m.IsTurned, m.FallM, null)).ToList();
        var shared = Shared(layout with { Mats = mats });
        return WithFalls(shared with { TeacherXM = laid.Sight?.Place.XM, TeacherYM = laid.Sight?.Place.YM }, falls);
    }

    /// <summary>Gives each station its mats, neighbours together, as evenly as can be; without stations no mat has one.</summary>
    /// <param name="layout">With its mats and stations.</param>
    public static HallLayout Shared(HallLayout layout)
    {
        var stations = layout.Stations.Count;
        if (stations == 0) return layout with { Mats = [.. layout.Mats.Select(m => m with { Station = null })] };
        // Strips from the left: mats of a station lie together.
        var order = layout.Mats.Select((m, i) => (m, i)).OrderBy(x => Math.Round(x.m.XM, 2)).ThenBy(x => x.m.YM).Select(x => x.i).ToList();
        var mats = layout.Mats.ToArray();
        for (var place = 0; place < order.Count; place++) mats[order[place]] = mats[order[place]] with { Station = place * stations / order.Count + 1 };
        return layout with { Mats = mats };
    }

    /// <summary>Gives each mat the circle of what is done on it: of its station's task, or the widest of all.</summary>
    /// <param name="layout">With its mats and stations.</param>
    /// <param name="falls">The tasks' circles; empty leaves every mat as it is.</param>
    public static HallLayout WithFalls(HallLayout layout, IReadOnlyList<TaskFall> falls) =>
        falls.Count == 0 ? layout : layout with { Mats = [.. layout.Mats.Select(m => m with { FallM = FallM(layout, m.Station, falls) })] };

    /// <summary>The circle of a mat of a station.</summary>
    /// <param name="layout">With its stations.</param>
    /// <param name="station">The station, from 1; none for a mat without one.</param>
    /// <param name="falls">The tasks' circles.</param>
    /// <returns>0 without a task.</returns>
    public static double FallM(HallLayout layout, int? station, IReadOnlyList<TaskFall> falls) =>
        station is { } s && s <= layout.Stations.Count && layout.Stations[s - 1].TaskId is { } task && falls.FirstOrDefault(f => f.TaskId == task) is { } own
            ? own.RadiusM
            : falls.Select(f => f.RadiusM).DefaultIfEmpty(0).Max();

    private static double Widest(HallLayout layout, IReadOnlyList<TaskFall> falls) => layout.Stations.Count == 0
        ? FallM(layout, null, falls)
        : Enumerable.Range(1, layout.Stations.Count).Max(s => FallM(layout, s, falls));
}
