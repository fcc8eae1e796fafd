using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Groups;

namespace Slantwise.Paper.LessonPages;

/// <summary>The groups of a list as boxes: number, mats and first station, then the names.</summary>
internal sealed class GroupBoxes(GroupList list, PageFrame frame, CultureInfo language)
{
    private const double PaddingMm = 3.5;
    private const double BetweenMm = 5;
    private const double StationPt = 14;
    private const double AfterHeadMm = 1.5;
    private const double LeadFraction = 0.72;
    private const double LeastLeadPt = 11;

    private readonly IReadOnlyList<string> _stations = list.Stations.Count == 0 ? [] : frame.Type.Lines(
        GroupSentences.Text("StationsInOrder", language, string.Join(" – ", list.Stations))
            + (list.StationMin is { } min ? " " + GroupSentences.Text("StationsEvery", language, min) : ""),
        frame.RoomMm, StationPt);

    /// <summary>The height of the line about stations, with the white after it; 0 where there are none.</summary>
    public double StationsMm => _stations.Count == 0 ? 0 : _stations.Count * frame.Type.LineMm(StationPt) + 3;

    public void DrawStations(Sketch sketch, double top) => sketch.Paragraph(frame.LeftMm, top, _stations, StationPt);

    /// <summary>All groups in rows.</summary>
    /// <param name="columns">How many beside each other.</param>
    /// <param name="sizePt">The type of the names.</param>
    /// <param name="mostMm">The most a box may be high; a group that takes more goes on in another box.</param>
    public IReadOnlyList<GroupRow> Rows(int columns, double sizePt, double mostMm = double.PositiveInfinity)
    {
        var width = WidthMm(columns) - 2 * PaddingMm;
        var boxes = new List<(int Number, IReadOnlyList<string> Lines)>();
        for (var g = 0; g < list.Groups.Count; g++)
        {
            var lines = list.Groups[g].Names.SelectMany(n => frame.Type.Lines(n, width, sizePt)).ToList();
            var most = double.IsPositiveInfinity(mostMm) ? int.MaxValue : Math.Max(1, (int)((mostMm - HeadMm(g, columns, sizePt) - 2 * PaddingMm) / frame.Type.LineMm(sizePt)));
            if (lines.Count == 0) boxes.Add((g, []));
            foreach (var part in lines.Chunk(most)) boxes.Add((g, part));
        }
        return [.. boxes.Chunk(columns).Select(row => new GroupRow(row, columns, sizePt, row.Max(b => HeadMm(b.Number, columns, sizePt) + b.Lines.Count * frame.Type.LineMm(sizePt) + 2 * PaddingMm)))];
    }

    public void DrawRow(Sketch sketch, GroupRow row, double top)
    {
        for (var i = 0; i < row.Groups.Count; i++)
        {
            var (number, lines) = row.Groups[i];
            var left = frame.LeftMm + i * (WidthMm(row.Columns) + BetweenMm);
            sketch.Add(new Box(left, top, WidthMm(row.Columns), row.HeightMm, Tone.Muted, Sketch.EdgeMm, 1.5));
            var y = top + PaddingMm;
            foreach (var (words, sizePt, weight) in Head(number, row.Columns, row.SizePt))
            {
                sketch.Paragraph(left + PaddingMm, y, [words], sizePt, weight: weight);
                y += frame.Type.LineMm(sizePt);
            }
            sketch.Paragraph(left + PaddingMm, y + AfterHeadMm, lines, row.SizePt);
        }
    }

    private double WidthMm(int columns) => (frame.RoomMm - (columns - 1) * BetweenMm) / columns;

    private double HeadMm(int group, int columns, double sizePt) => Head(group, columns, sizePt).Sum(l => frame.Type.LineMm(l.SizePt)) + AfterHeadMm;

    private IEnumerable<(string Words, double SizePt, TextWeight Weight)> Head(int number, int columns, double sizePt)
    {
        var (group, width, small) = (list.Groups[number], WidthMm(columns) - 2 * PaddingMm, Math.Max(LeastLeadPt, sizePt * LeadFraction));
        foreach (var line in frame.Type.Lines(GroupSentences.Text("ListGroup", language, number + 1), width, sizePt, TextWeight.Bold)) yield return (line, sizePt, TextWeight.Bold);
        string[] places =
        [
            group.MatCount > 0 ? GroupSentences.TextCount("MatsAre", language, group.MatCount, group.Mats) : "",
            group.FirstStation.Length > 0 ? GroupSentences.Text("BeginsAt", language, group.FirstStation) : "",
        ];
        foreach (var line in places.Where(p => p.Length > 0).SelectMany(p => frame.Type.Lines(p, width, small))) yield return (line, small, TextWeight.Regular);
    }
}
