using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.LessonPages;

/// <summary>A lesson on one page for whoever teaches it.</summary>
public static class LessonPage
{
    private const double RuleEveryMm = 8;
    private const double NotesStretchMm = 400;

    /// <summary>The page; always one.</summary>
    /// <param name="record">The lesson, with its frozen sheet.</param>
    /// <param name="before">The class's last lesson with results before this one; none where there is none.</param>
    /// <param name="options">Paper, language, and whether those with other levels are named.</param>
    /// <returns>
    /// What has no room is left out in one order, the least needed in the hall first, and the page says what was left out. Cautions never are.
    /// How many pupils have other levels is said, never why.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task; cautions longer than a sheet may hold.</exception>
    public static Scene Of(LessonRecord record, LessonRecord? before, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 })
            throw new ArgumentException("A lesson page is printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        var words = new CardWords(options.Language);
        var page = Fitted(record, before, options, options.HasWideSpacing)
            // Wider spacing goes last of all, where nothing else makes it one page.
            ?? Fitted(record, before, options with { HasWideSpacing = false }, options.HasWideSpacing)
            ?? throw new ArgumentException("A lesson's cautions are too long for one page: a sheet holds at most three tasks, and a caution at most 300 characters.", nameof(record));
        var scene = page with { Description = words.Of("LessonDescription", record.Class.Name, new PaperWords(options.Language).Date(record.Lesson.Date)) };
        return options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene;
    }

    // None where even the least takes more than a page.
    private static Scene? Fitted(LessonRecord record, LessonRecord? before, PaperOptions options, bool isWideAsked)
    {
        var frame = PageFrame.Of(options.Size) with { Type = TypeScale.Of(options with { IsLargePrint = false, IsTwoUp = false }) };
        var (words, paperWords) = (new CardWords(options.Language), new PaperWords(options.Language));
        var head = new ClassHead(record, frame, paperWords, isPaged: false);
        var top = frame.TopMm + head.HeightMm;
        var plan = new PlanLines(record, frame, options, words);
        var asking = new Asking(record, before, options.Language, words, paperWords);
        IReadOnlyList<string> always = isWideAsked && !options.HasWideSpacing ? ["CutSpacing"] : [];

        // The least needed goes first until the rest fits; then comes back what still has room, the most needed first.
        List<string> cuts = [];
        // Of what there is nothing of, nothing can be left out; what stands beside something taller may be worth it once that is gone.
        for (var count = -1; count < cuts.Count && Pages(cuts).Count > 1;)
        {
            count = cuts.Count;
            foreach (var cut in LessonDetail.AllCuts.Where(c => !cuts.Contains(c)).ToList())
            {
                if (HeightMm([.. cuts, cut]) < HeightMm(cuts)) cuts.Add(cut);
                if (Pages(cuts).Count == 1) break;
            }
        }
        foreach (var cut in cuts.AsEnumerable().Reverse().ToList())
        {
            List<string> fewer = [.. cuts.Where(c => c != cut)];
            if (Pages(fewer).Count == 1) cuts = fewer;
        }
        if (Pages(cuts) is not [var placed]) return null;
        var sketch = new Sketch(frame.Type);
        head.DrawOn(sketch, 1, 1);
        foreach (var block in placed) block.DrawOn(sketch);
        return new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, "");

        double HeightMm(IReadOnlyList<string> without) => Blocks(LessonDetail.Without(without), []).Sum(b => b.LeastMm + b.GapMm);

        IReadOnlyList<IReadOnlyList<Placed>> Pages(IReadOnlyList<string> without) => Column.Pages(
            Blocks(LessonDetail.Without(without), [.. always, .. LessonDetail.Named(without)]), new Block(0, (_, _, _) => { }), top, frame.BottomMm);

        IReadOnlyList<Block> Blocks(LessonDetail detail, IReadOnlyList<string> cuts) =>
        [
            .. new TimeLine(record.Lesson.Phases, frame, words).Blocks(detail),
            .. plan.Blocks(detail),
            .. record.Sheet!.Content.Tasks.SelectMany((task, i) => new TaskBrief(task, i + 1, record, frame, paperWords).Blocks(detail)),
            .. Pairs(record, options, frame, words, paperWords, asking, detail),
            .. Notes(frame, words, detail),
            .. Cut(frame, words, cuts),
        ];
    }

    private static IEnumerable<Block> Pairs(
        LessonRecord record, PaperOptions options, PageFrame frame, CardWords words, PaperWords paperWords, Asking asking, LessonDetail detail)
    {
        var columns = new PageColumns(frame);
        var (half, right) = (columns.HalfMm, frame.LeftMm + columns.HalfMm + PageColumns.GutterMm);
        IReadOnlyList<PageLine> Items(string heading, IEnumerable<string> items, string mark = "–") => [columns.Heading(words[heading]), .. items.SelectMany(i => columns.Lines(i, half, mark))];

        string[] shown = detail.HasDemonstration ? ["ShowLevels", "ShowCues", "ShowSet", "ShowChoice"] : [];
        var others = Items("OthersHead", new OtherLevels(record, options, words, paperWords).Sentences(detail.HasNames), "");
        var equipment = Items("EquipmentHead", Equipment.Of(record, words), PageLine.Box);
        yield return columns.Block(3, (frame.LeftMm, Items("SafetyHead", SafetyLines.Of(record.School.Policy, words))), (right, others));
        yield return shown.Length > 0
            ? columns.Block(3, (frame.LeftMm, Items("DemonstrationHead", shown.Select(k => words[k]), PageLine.Box)), (right, equipment))
            : columns.Block(3, (frame.LeftMm, equipment));

        List<PageLine> questions = [];
        if (detail.QuestionsPerTopicCount > 0)
        {
            questions.Add(columns.Heading(words["QuestionsHead"]));
            foreach (var topic in asking.Questions(detail.QuestionsPerTopicCount).GroupBy(q => q.Topic))
            {
                if (detail.QuestionsPerTopicCount > 1) questions.Add(new PageLine(topic.Key) { Tone = Tone.Muted });
                questions.AddRange(topic.SelectMany(q => columns.Lines(q.Question, half, "–")));
            }
        }
        List<PageLine> debrief = [];
        if (detail.HasDebrief) debrief = [.. Items("DebriefHead", asking.Debrief())];
        if (detail is { HasDebrief: true, HasPatterns: true }) debrief.AddRange(asking.Patterns().SelectMany(p => columns.Lines(p, half, tone: Tone.Muted)));
        if (questions.Count > 0 && debrief.Count > 0) yield return columns.Block(3, (frame.LeftMm, questions), (right, debrief));
        else if (questions.Count + debrief.Count > 0) yield return columns.Block(3, (frame.LeftMm, questions.Count > 0 ? questions : debrief));
    }

    private static IEnumerable<Block> Notes(PageFrame frame, CardWords words, LessonDetail detail)
    {
        if (detail.NotesMm == 0) yield break;
        var columns = new PageColumns(frame);
        yield return new Block(detail.NotesMm, (sketch, top, height) =>
        {
            sketch.Words(frame.LeftMm, top + TypeScale.AscentMm(columns.SizePt), words["NotesHead"], columns.SizePt, weight: TextWeight.Bold);
            for (var y = top + columns.LineMm + RuleEveryMm; y <= top + height; y += RuleEveryMm) sketch.Rule(frame.LeftMm, frame.RightMm, y);
        })
        { GapMm = 3, StretchMm = NotesStretchMm };
    }

    private static IEnumerable<Block> Cut(PageFrame frame, CardWords words, IReadOnlyList<string> cuts)
    {
        if (cuts.Count == 0) yield break;
        var columns = new PageColumns(frame);
        yield return columns.Block(2, (frame.LeftMm, [.. columns.Lines(words.Of("LeftOut", string.Join("; ", cuts.Select(c => words[c]))), frame.RoomMm, tone: Tone.Muted)]));
    }
}
