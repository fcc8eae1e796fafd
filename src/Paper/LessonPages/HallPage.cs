using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Halls;
using Slantwise.Records.Halls.Drawing;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.LessonPages;

/// <summary>The lesson's hall to scale, and who is at which station when: the back of the lesson page.</summary>
public static class HallPage
{
    private const double LeastDrawingMm = 70;
    private const int MostClashes = 6;

    /// <summary>The page; none where no hall was planned, or no mat and no station is in it.</summary>
    /// <param name="record">The lesson.</param>
    /// <param name="hall">Its hall; none where none was planned.</param>
    /// <param name="options">Paper and language.</param>
    /// <returns>One page: the drawing takes what the tables leave, and rounds that find no room are left out with a sentence.</returns>
    public static Scene? Of(LessonRecord record, LessonHall? hall, PaperOptions options)
    {
        if (hall is null || (hall.Layout.Mats.Count == 0 && hall.Layout.Stations.Count == 0)) return null;
        var language = options.Language;
        var frame = PageFrame.Of(options.Size) with { Type = TypeScale.Of(options with { IsLargePrint = false, IsTwoUp = false, HasWideSpacing = false }) };
        var words = new PaperWords(language);
        var head = new ClassHead(record, frame, words, isPaged: false);
        var sketch = new Sketch(frame.Type);
        head.DrawOn(sketch, 1, 1);

        var reading = HallReading.Of(hall.Hall, hall.Layout, record.Pupils.Count, language);
        var columns = new PageColumns(frame);
        var layout = hall.Layout;
        List<PageLine> above =
        [
            columns.Heading($"{HallWords.Text("PageTitle", language)}: {hall.Hall.Name}"),
            .. columns.Lines(HallWords.Text("PageMats", language, layout.MatLengthM, layout.MatWidthM, layout.ClearM, layout.WallClearM), frame.RoomMm, tone: Tone.Muted),
        ];
        var clashes = reading.ClashNotes.Take(MostClashes).SelectMany(n => columns.Lines(n.Sentence, frame.RoomMm, "–")).ToList();
        if (clashes.Count > 0) clashes.Insert(0, columns.Heading(HallWords.Text("PageClashes", language)));
        if (reading.ClashNotes.Count > MostClashes) clashes.Add(new PageLine(HallWords.Text("PageMore", language, reading.ClashNotes.Count - MostClashes)) { Tone = Tone.Muted });
        List<Block> below = [];
        if (clashes.Count > 0) below.Add(columns.Block(4, (frame.LeftMm, clashes)));
        if (StationPlan.Of(layout, record.Lesson.Phases, hall.GroupCount) is { } plan) below.AddRange(new RotationTable(layout, plan, record, frame, language).Blocks());

        var top = frame.TopMm + head.HeightMm;
        var aboveMm = above.Count * columns.LineMm;
        // What does not fit beside the least drawing is left out from the end.
        double BelowMm() => below.Sum(b => b.LeastMm + b.GapMm);
        // The sentence that says so takes room too.
        Block leftOut = columns.Block(3, (frame.LeftMm, [.. columns.Lines(HallWords.Text("PageLeftOut", language), frame.RoomMm, tone: Tone.Muted)]));
        var isCut = false;
        while (below.Count > (isCut ? 1 : 0) && frame.BottomMm - top - aboveMm - BelowMm() < LeastDrawingMm)
        {
            if (!isCut) below.Add(leftOut);
            isCut = true;
            below.RemoveAt(below.Count - 2);
        }
        columns.Block(0, (frame.LeftMm, above)).Draw(sketch, top, aboveMm);
        var drawing = HallDrawing.Of(hall.Hall, layout, reading, new HallBox(frame.RoomMm, frame.BottomMm - top - aboveMm - 2 - BelowMm(), frame.Type.SmallPt), language);
        foreach (var shape in drawing.Scene.Shapes) sketch.Add(ShapeMove.By(shape, frame.LeftMm, top + aboveMm + 2));
        var y = top + aboveMm + 2 + drawing.HeightMm;
        foreach (var block in below)
        {
            block.Draw(sketch, y + block.GapMm, block.LeastMm);
            y += block.GapMm + block.LeastMm;
        }
        var scene = new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, $"{HallWords.Text("PageDescription", language, record.Class.Name, words.Date(record.Lesson.Date))} {drawing.Description}");
        return options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene;
    }
}
