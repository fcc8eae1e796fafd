using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.LessonPages;

/// <summary>The list of a lesson's groups for the wall: names as large as one page allows, mats and stations; nothing of what was said or wished.</summary>
public static class GroupListPages
{
    private const double MostPt = 30;
    private const double LeastPt = 13;
    private const int MostColumns = 3;
    private const double GapMm = 5;

    /// <summary>The pages.</summary>
    /// <param name="record">The lesson.</param>
    /// <param name="list">Its groups.</param>
    /// <param name="options">Paper and language.</param>
    /// <returns>One page where the names are 13 pt or larger on it, else as many as it takes at 13 pt. Empty where there are no groups.</returns>
    public static IReadOnlyList<Scene> Of(LessonRecord record, GroupList list, PaperOptions options)
    {
        if (list.Groups.Count == 0) return [];
        var frame = PageFrame.Of(options.Size);
        var paperWords = new PaperWords(options.Language);
        var boxes = new GroupBoxes(list, frame, options.Language);
        var pages = OnOnePage(boxes, RoomMm(new ClassHead(record, frame, paperWords, isPaged: false))) is { } one
            ? [one] : Split(boxes, RoomMm(new ClassHead(record, frame, paperWords, isPaged: true)));
        var head = new ClassHead(record, frame, paperWords, isPaged: pages.Count > 1);
        var scenes = pages.Select((rows, i) =>
        {
            var sketch = new Sketch(frame.Type);
            head.DrawOn(sketch, i + 1, pages.Count);
            var top = frame.TopMm + head.HeightMm;
            boxes.DrawStations(sketch, top);
            top += boxes.StationsMm;
            foreach (var row in rows)
            {
                boxes.DrawRow(sketch, row, top);
                top += row.HeightMm + GapMm;
            }
            var description = GroupSentences.Text("ListDescription", options.Language, record.Class.Name, paperWords.Date(record.Lesson.Date));
            var scene = new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, description);
            return options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene;
        });
        return [.. scenes];

        double RoomMm(ClassHead top) => frame.BottomMm - frame.TopMm - top.HeightMm - boxes.StationsMm;
    }

    // The largest type first; of two arrangements with it, the one with fewer columns.
    private static IReadOnlyList<GroupRow>? OnOnePage(GroupBoxes boxes, double roomMm)
    {
        for (var sizePt = MostPt; sizePt >= LeastPt; sizePt--)
            for (var columns = 1; columns <= MostColumns; columns++)
                if (boxes.Rows(columns, sizePt) is var rows && HeightMm(rows) <= roomMm) return rows;
        return null;
    }

    private static IReadOnlyList<IReadOnlyList<GroupRow>> Split(GroupBoxes boxes, double roomMm)
    {
        var pages = new List<List<GroupRow>> { new() };
        foreach (var row in boxes.Rows(2, LeastPt, roomMm))
        {
            if (pages[^1].Count > 0 && HeightMm([.. pages[^1], row]) > roomMm) pages.Add([]);
            pages[^1].Add(row);
        }
        return pages;
    }

    private static double HeightMm(IReadOnlyList<GroupRow> rows) => rows.Sum(r => r.HeightMm) + (rows.Count - 1) * GapMm;
}
