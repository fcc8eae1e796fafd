using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Halls;
using Slantwise.Records.Halls.Drawing;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.LessonPages;

/// <summary>The stations with their mats, and who is at which one when.</summary>
internal sealed class RotationTable(HallLayout layout, StationPlan plan, LessonRecord record, PageFrame frame, CultureInfo language)
{
    private const double RowMm = 6.6;
    private const double TimeMm = 34;
    private const double LeastColumnMm = 12;

    private readonly PageColumns _columns = new(frame);

    public IEnumerable<Block> Blocks()
    {
        var minutes = plan.NeededMin / layout.Stations.Count;
        List<PageLine> lines =
        [
            _columns.Heading(HallWords.Text("PageStations", language)),
            .. Enumerable.Range(0, layout.Stations.Count).SelectMany(s => _columns.Lines(StationOf(s), frame.RoomMm)),
            .. _columns.Lines(HallWords.Text("PageRoundNote", language, minutes), frame.RoomMm, tone: Tone.Muted),
            .. plan.Warnings.Where(w => w != StationWarning.WithoutMat).SelectMany(w => _columns.Lines(StationWording.Of(w, plan, language), frame.RoomMm, "!")),
        ];
        yield return _columns.Block(4, (frame.LeftMm, lines));
        // Groups that find no room across go into a table of their own below.
        var across = Math.Max(1, Math.Min(plan.GroupCount, (int)((frame.RoomMm - TimeMm) / LeastColumnMm)));
        for (var first = 0; first < plan.GroupCount; first += across) yield return Table(first, Math.Min(across, plan.GroupCount - first), across);
    }

    private string StationOf(int station)
    {
        var name = StationWording.NameOf(layout, station, language);
        var task = layout.Stations[station].TaskId is { } id ? record.Sheet?.Content.Tasks.FirstOrDefault(t => t.TaskId == id)?.Name : null;
        var mats = StationWording.MatsOf(layout, station, language);
        return task is null || task == layout.Stations[station].Name ? $"{name} ({mats})" : $"{name}: {task} ({mats})";
    }

    private Block Table(int first, int count, int across)
    {
        var size = frame.Type.SmallPt;
        var columnMm = Math.Min(26, (frame.RoomMm - TimeMm) / across);
        var right = frame.LeftMm + TimeMm + count * columnMm;
        return new Block((plan.Rounds.Count + 1) * RowMm, (sketch, top, _) =>
        {
            double X(int i) => frame.LeftMm + TimeMm + (i + 0.5) * columnMm;
            double Middle(int row) => top + (row + 0.5) * RowMm;
            // A group's number alone where its word finds no room.
            var isWide = frame.Type.WidthMm(HallWords.Text("Group", language, 10), size, TextWeight.Bold) < columnMm - 1;
            for (var i = 0; i < count; i++)
                sketch.Centred(X(i), Middle(0), isWide ? HallWords.Text("Group", language, first + i + 1) : $"{first + i + 1}", size, weight: TextWeight.Bold);
            if (!isWide) sketch.Words(frame.LeftMm, Middle(0) + TypeScale.HalfCapitalMm(size), HallWords.Text("Group", language, ""), size, weight: TextWeight.Bold);
            for (var r = 0; r < plan.Rounds.Count; r++)
            {
                var round = plan.Rounds[r];
                sketch.Rule(frame.LeftMm, right, top + (r + 1) * RowMm, Tone.Muted);
                sketch.Words(frame.LeftMm, Middle(r + 1) + TypeScale.HalfCapitalMm(size), HallWords.Text("RoundTime", language, round.StartMin, round.EndMin), size);
                for (var i = 0; i < count; i++) sketch.Centred(X(i), Middle(r + 1), StationLetter.Of(round.Stations[first + i] + 1)!, size, weight: TextWeight.Bold);
            }
            sketch.Rule(frame.LeftMm, right, top + (plan.Rounds.Count + 1) * RowMm, Tone.Muted);
        })
        { GapMm = 3 };
    }
}
