using System.Globalization;
using static Slantwise.Engines.Drawing.Charts.ChartText;

namespace Slantwise.Engines.Drawing.Charts;

/// <summary>The level one pupil chose for each set, as stairs, with the tries standing on them: filled where they succeeded, open where not.</summary>
/// <remarks>Level 1 is at the bottom as on the sheet; the height is the sheet's order, not a score.</remarks>
public static class LevelSteps
{
    private const double LaneMm = 8;
    private const double LeftMm = 6;
    private const double BottomMm = 5;
    private const double LargestPitchMm = 2.2;
    private const double SmallestPitchMm = 1.3;

    /// <summary>The chart.</summary>
    /// <param name="steps">The sets in order, over one lesson or several; may be empty.</param>
    /// <param name="levelCount">Levels of the task, 1 or more.</param>
    /// <param name="lessonTexts">What stands under each lesson that has sets, in order ("lesson 1"), in words of the caller.</param>
    /// <param name="noLevelText">What stands beside the lane of sets without a level ("?"), which is drawn only where there are any.</param>
    /// <param name="widthMm">40 or more; made for 60 to 120.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <returns>8 mm a level and 5 mm for the lessons.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Narrower than 40 mm, or not a number; no level; a step at a level below 1 or above the levels.</exception>
    /// <exception cref="ArgumentException">Lessons that run backwards; a lesson without its text.</exception>
    public static Scene Of(
        IReadOnlyList<LevelStep> steps, int levelCount, IReadOnlyList<string> lessonTexts, string noLevelText, double widthMm, string description)
    {
        CheckWidth(widthMm);
        Check(steps, levelCount, lessonTexts);

        var hasGap = steps.Any(s => s.LevelNumber is null);
        var laneCount = levelCount + (hasGap ? 1 : 0);
        var floorMm = laneCount * LaneMm;
        var columnMm = (widthMm - LeftMm) / Math.Max(1, steps.Count);
        var shapes = new List<Shape>();

        for (var level = 1; level <= levelCount; level++)
        {
            shapes.Add(new Line(LeftMm, StairMm(level), widthMm, StairMm(level), 0.15, Tone.Faint));
            shapes.Add(new Text(LeftMm - 2, StairMm(level), level.ToString(CultureInfo.InvariantCulture), SmallPt, Tone.Muted, TextAnchor.End));
        }
        if (hasGap)
        {
            shapes.Add(new Line(LeftMm, floorMm - 1, widthMm, floorMm - 1, 0.15, Tone.Faint, IsDashed: true));
            shapes.Add(new Text(LeftMm - 2, floorMm - 1, noLevelText, SmallPt, Tone.Muted, TextAnchor.End));
        }
        AddLessons(shapes, steps, lessonTexts, columnMm, floorMm, widthMm);
        AddStairs(shapes, steps, columnMm, StairMm);
        for (var i = 0; i < steps.Count; i++)
            AddTrials(shapes, steps[i].Trials, LeftMm + (i + 0.5) * columnMm, StairMm(steps[i].LevelNumber), columnMm);
        return new Scene(widthMm, floorMm + BottomMm, shapes, description);

        double StairMm(int? level) => level is { } number ? (levelCount - number + 1) * LaneMm - 1 : floorMm - 1;
    }

    /// <summary>Says what is wrong with the steps, if anything is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No level; a step at a level below 1 or above the levels.</exception>
    /// <exception cref="ArgumentException">Lessons that run backwards; a lesson without its text.</exception>
    private static void Check(IReadOnlyList<LevelStep> steps, int levelCount, IReadOnlyList<string> lessonTexts)
    {
        if (levelCount < 1)
            throw new ArgumentOutOfRangeException(nameof(levelCount), levelCount, "A task has at least 1 level.");
        if (steps.FirstOrDefault(s => s.LevelNumber < 1 || s.LevelNumber > levelCount) is { } outside)
            throw new ArgumentOutOfRangeException(nameof(steps), outside.LevelNumber, $"A step is at a level from 1 to {levelCount}.");
        if (steps.Zip(steps.Skip(1)).Any(pair => pair.Second.LessonNumber < pair.First.LessonNumber))
            throw new ArgumentException("Steps come in the order of their lessons.", nameof(steps));
        if (steps.Select(s => s.LessonNumber).Distinct().Count() != lessonTexts.Count)
            throw new ArgumentException("Each lesson with steps has one text.", nameof(lessonTexts));
    }

    private static void AddLessons(
        List<Shape> shapes, IReadOnlyList<LevelStep> steps, IReadOnlyList<string> texts, double columnMm, double floorMm, double widthMm)
    {
        var (index, fromMm) = (0, LeftMm);
        foreach (var lesson in steps.GroupBy(s => s.LessonNumber))
        {
            var toMm = fromMm + lesson.Count() * columnMm;
            if (index > 0) shapes.Add(new Line(fromMm, 1, fromMm, floorMm + BottomMm - 0.5, 0.4, Tone.Faint));
            shapes.Add(new Text((fromMm + Math.Min(toMm, widthMm)) / 2, floorMm + 3.4, Fitting(texts[index], SmallPt, toMm - fromMm), SmallPt, Tone.Muted, TextAnchor.Middle));
            (index, fromMm) = (index + 1, toMm);
        }
    }

    // A set without a level breaks the stairs: where the pupil stood is not known.
    private static void AddStairs(List<Shape> shapes, IReadOnlyList<LevelStep> steps, double columnMm, Func<int?, double> stairMm)
    {
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].LevelNumber is null) continue;
            var run = new List<OutlineStep> { new(OutlineStepKind.Move, LeftMm + i * columnMm, stairMm(steps[i].LevelNumber)) };
            for (; i < steps.Count && steps[i].LevelNumber is not null; i++)
            {
                run.Add(new(OutlineStepKind.Line, LeftMm + i * columnMm, stairMm(steps[i].LevelNumber)));
                run.Add(new(OutlineStepKind.Line, LeftMm + (i + 1) * columnMm, stairMm(steps[i].LevelNumber)));
            }
            shapes.Add(new Outline(run, Tone.Ink, 0.5));
        }
    }

    private static void AddTrials(List<Shape> shapes, IReadOnlyList<bool> trials, double centreMm, double stairMm, double columnMm)
    {
        if (trials.Count == 0) return;
        var roomMm = columnMm - 0.6;
        var perRow = Math.Clamp((int)(roomMm / SmallestPitchMm), 1, trials.Count);
        var rowCount = (trials.Count + perRow - 1) / perRow;
        // Rows of nearly one length: 5 as 3 and 2, not 4 and 1.
        perRow = (trials.Count + rowCount - 1) / rowCount;
        var pitchMm = Math.Min(Math.Min(LargestPitchMm, roomMm / perRow), (LaneMm - 1.6) / rowCount);
        var radiusMm = pitchMm * 0.38;
        for (var i = 0; i < trials.Count; i++)
        {
            var inRow = Math.Min(perRow, trials.Count - i / perRow * perRow);
            var xMm = centreMm + (i % perRow - (inRow - 1) / 2.0) * pitchMm;
            var yMm = stairMm - 0.5 - pitchMm / 2 - (rowCount - 1 - i / perRow) * pitchMm;
            if (trials[i])
            {
                shapes.Add(new Disc(xMm, yMm, radiusMm, Tone.Accent));
                continue;
            }
            var strokeMm = radiusMm * 0.35;
            shapes.Add(new Disc(xMm, yMm, radiusMm, Tone.Ground));
            shapes.Add(new Disc(xMm, yMm, radiusMm - strokeMm / 2, Tone.Accent, strokeMm));
        }
    }
}
