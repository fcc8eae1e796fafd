using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Planning.Blocks;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>The phases of a lesson as a picture, and the same in words.</summary>
public static class PlanTimeLine
{
    // Narrow, so that on a telephone its words are still as large as small print.
    private const double WidthMm = 90;

    /// <summary>The picture; its description says every block and the moment the last one is done.</summary>
    /// <param name="planning">The planning.</param>
    /// <param name="phases">The lesson's phases; their notes are shown where they are the planning's blocks.</param>
    public static Scene Of(LessonPlanning planning, IReadOnlyList<LessonPhase> phases)
    {
        var culture = CultureInfo.CurrentUICulture;
        string Say(string key, params object[] gaps) => PlanningWords.Text(key, culture, gaps);
        var inActivityS = planning.Blocks.Blocks.Where(b => b.Category == TimeCategory.Activity).Sum(b => b.EndS - b.StartS);
        var waitingFraction = inActivityS > 0 ? Math.Clamp(1 - planning.Blocks.ActivityS / inActivityS, 0, 1) : 0;
        var spans = planning.Blocks.Blocks.Select((block, i) =>
        {
            var name = Say("Category" + block.Category);
            return new BlockSpan(
                i < phases.Count && phases[i].Note.Length > 0 ? $"{name}: {phases[i].Note}" : name, Say("LineTime", block.StartS / 60, block.EndS / 60), block.StartS, block.EndS,
                block.Category switch { TimeCategory.Activity => Tone.Accent, TimeCategory.Instruction => Tone.Second, _ => Tone.Muted },
                block.Category == TimeCategory.Activity ? waitingFraction : 0);
        }).ToList();
        var doneMin = Math.Ceiling(planning.LastDoneS / 60 - 1e-9);
        var described = string.Join(", ", planning.Blocks.Blocks.Select(b => Say("LineBlock", Say("Category" + b.Category), b.StartS / 60, b.EndS / 60)));
        return BlockLine.Of(
            spans, planning.Plan.AtMatsS > 0 ? new BlockMark(Say("LineMark"), planning.LastDoneS) : null, WidthMm,
            Say("Line", planning.Blocks.PlannedS / 60, described, doneMin));
    }
}
