using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.LessonPages;

/// <summary>A lesson on paper for whoever teaches it.</summary>
public static class LessonPage
{
    private const double RuleEveryMm = 8;
    private const double NotesStretchMm = 400;

    private const int MostPageCount = 2;

    // What may go so that a usual lesson stays on one page, step by step: room to write, then the second question of a kind.
    private static readonly string[][] Tighter = [[], ["CutSomeNotes"], ["CutSomeNotes", "CutQuestions"], ["CutQuestions", "CutNotes"]];

    /// <summary>The page; a second one where there is much to say.</summary>
    /// <param name="record">The lesson, with its frozen sheet.</param>
    /// <param name="plans">What is known around it: other plans, and the class's last lesson with results.</param>
    /// <param name="options">Paper, language, and whether those with other levels are named.</param>
    /// <returns>
    /// One page or two, and one of the hall where that was planned. What has no room on two is left out in one order, the least needed in the hall first, and the page says what was left out.
    /// Cautions never are. How many pupils have other levels is said, never why.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task; cautions longer than a sheet may hold.</exception>
    public static IReadOnlyList<Scene> Of(LessonRecord record, LessonPlans plans, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 })
            throw new ArgumentException("A lesson page is printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        var words = new CardWords(options.Language);
        var pages = Fitted(record, plans, options, options.HasWideSpacing)
            // Wider spacing goes last of all, where nothing else makes it fit.
            ?? Fitted(record, plans, options with { HasWideSpacing = false }, options.HasWideSpacing)
            ?? throw new ArgumentException("A lesson's cautions are too long for two pages: a sheet holds at most three tasks, and a caution at most 300 characters.", nameof(record));
        Scene[] hall = HallPage.Of(record, plans.Hall, options) is { } drawn ? [drawn] : [];
        return [.. pages.Select(page =>
        {
            var scene = page with { Description = words.Of("LessonDescription", record.Class.Name, new PaperWords(options.Language).Date(record.Lesson.Date)) };
            return options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene;
        }), .. hall];
    }

    // None where even the least takes more than two pages.
    private static IReadOnlyList<Scene>? Fitted(LessonRecord record, LessonPlans plans, PaperOptions options, bool isWideAsked)
    {
        var frame = PageFrame.Of(options.Size) with { Type = TypeScale.Of(options with { IsLargePrint = false, IsTwoUp = false }) };
        var (words, paperWords) = (new CardWords(options.Language), new PaperWords(options.Language));
        var asking = new Asking(record, plans, options.Language, words);
        var plan = new PlanLines(record, frame, options, words);
        IReadOnlyList<string> always = isWideAsked && !options.HasWideSpacing ? ["CutSpacing"] : [];

        var single = new ClassHead(record, frame, paperWords, isPaged: false);
        foreach (var cuts in Tighter)
            if (Pages(cuts, single) is [var only]) return Drawn([only], single);
        var paged = new ClassHead(record, frame, paperWords, isPaged: true);
        var kept = Fewest(paged);
        return Pages(kept, paged) is { Count: <= MostPageCount } placed ? Drawn(placed, paged) : null;

        // The least needed goes first until the rest fits; then comes back what still has room, the most needed first.
        List<string> Fewest(ClassHead head)
        {
            List<string> cuts = [];
            // Of what there is nothing of, nothing can be left out; what stands beside something taller may be worth it once that is gone.
            for (var count = -1; count < cuts.Count && Pages(cuts, head).Count > MostPageCount;)
            {
                count = cuts.Count;
                foreach (var cut in LessonDetail.AllCuts.Where(c => !cuts.Contains(c)).ToList())
                {
                    if (HeightMm([.. cuts, cut]) < HeightMm(cuts)) cuts.Add(cut);
                    if (Pages(cuts, head).Count <= MostPageCount) break;
                }
            }
            foreach (var cut in cuts.AsEnumerable().Reverse().ToList())
            {
                List<string> fewer = [.. cuts.Where(c => c != cut)];
                if (Pages(fewer, head).Count <= MostPageCount) cuts = fewer;
            }
            return cuts;
        }

        IReadOnlyList<Scene> Drawn(IReadOnlyList<IReadOnlyList<Placed>> placed, ClassHead head) => [.. placed.Select((page, i) =>
        {
            var sketch = new Sketch(frame.Type);
            head.DrawOn(sketch, i + 1, placed.Count);
            foreach (var block in page) block.DrawOn(sketch);
            return new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, "");
        })];

        double HeightMm(IReadOnlyList<string> without) => Blocks(LessonDetail.Without(without), []).Sum(b => b.LeastMm + b.GapMm);

        IReadOnlyList<IReadOnlyList<Placed>> Pages(IReadOnlyList<string> without, ClassHead head) => Column.Pages(
            Blocks(LessonDetail.Without(without), [.. always, .. LessonDetail.Named(without)]), new Block(0, (_, _, _) => { }), frame.TopMm + head.HeightMm, frame.BottomMm);

        IReadOnlyList<Block> Blocks(LessonDetail detail, IReadOnlyList<string> cuts) =>
        [
            .. Aims(record, frame, words, detail),
            .. new TimeLine(record.Lesson.Phases, frame, words).Blocks(detail),
            .. plan.Blocks(detail),
            .. record.Sheet!.Content.Tasks.SelectMany((task, i) => new TaskBrief(task, i + 1, record, frame, paperWords, asking.Errors(task)).Blocks(detail)),
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

        // The teacher's own steps; else what every demonstration of a sheet needs.
        IReadOnlyList<string> steps = record.Lesson.Demonstration is { Count: > 0 } own ? own : [words["ShowLevels"], words["ShowCues"], words["ShowSet"], words["ShowChoice"]];
        if (!detail.HasDemonstration) steps = [];
        var others = Items("OthersHead", new OtherLevels(record, options, words, paperWords).Sentences(detail.HasNames), "");
        var equipment = Items("EquipmentHead", Equipment.Of(record, words), PageLine.Box);
        yield return columns.Block(3, (frame.LeftMm, Items("SafetyHead", SafetyLines.Of(record, words, options.Language))), (right, others));
        yield return steps.Count > 0
            ? columns.Block(3, (frame.LeftMm, Items("DemonstrationHead", steps, PageLine.Box)), (right, equipment))
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
        var debrief = detail.HasDebrief ? Debrief(columns, words, paperWords, asking, options, detail).ToList() : [];
        if (questions.Count > 0 && debrief.Count > 0) yield return columns.Block(3, (frame.LeftMm, questions), (right, debrief));
        else if (questions.Count + debrief.Count > 0) yield return columns.Block(3, (frame.LeftMm, questions.Count > 0 ? questions : debrief));
    }

    private static IEnumerable<Block> Aims(LessonRecord record, PageFrame frame, CardWords words, LessonDetail detail)
    {
        if (!detail.HasAims || record.Lesson.Aims.Count == 0) yield break;
        var columns = new PageColumns(frame);
        yield return columns.Block(2.5, (frame.LeftMm, [columns.Heading(words["AimsHead"]), .. record.Lesson.Aims.SelectMany(a => columns.Lines(a, frame.RoomMm, "–"))]));
    }

    private static IEnumerable<PageLine> Debrief(PageColumns columns, CardWords words, PaperWords paperWords, Asking asking, PaperOptions options, LessonDetail detail)
    {
        yield return columns.Heading(words["DebriefHead"]);
        if (detail.HasPatterns && asking.Debrief is { LastDay: { } day, Items: { Count: > 0 } items })
        {
            yield return new PageLine(words.Of("LastTime", paperWords.Date(day))) { Tone = Tone.Muted };
            foreach (var item in items)
            {
                foreach (var line in columns.Lines(item.Reason(options.Language), columns.HalfMm, tone: Tone.Muted)) yield return line;
                foreach (var line in columns.Lines(item.Question(options.Language), columns.HalfMm, "–")) yield return line;
            }
        }
        else if (detail.HasPatterns && asking.Debrief is { HasTooLittle: true, LastDay: { } last })
        {
            foreach (var line in columns.Lines(words.Of("LastTimeTooLittle", paperWords.Date(last)), columns.HalfMm, tone: Tone.Muted)) yield return line;
        }
        foreach (var line in asking.OpenQuestions(detail.HasPatterns).SelectMany(q => columns.Lines(q, columns.HalfMm, "–"))) yield return line;
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
