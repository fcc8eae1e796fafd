using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Planning.Blocks;
using Slantwise.Records.Planning;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>The phases of a lesson as a picture, and the same in words.</summary>
public static class PlanTimeLine
{
    // Narrow, so that on a telephone its words are still as large as small print.
    private const double WidthMm = 90;

    /// <summary>The picture; its description says every block and the moment the last one is done.</summary>
    /// <param name="planning">The planning.</param>
    /// <remarks>A note of the teacher's says more than what kind a block is.</remarks>
    public static Scene Of(LessonPlanning planning)
    {
        var culture = CultureInfo.CurrentUICulture;
        var inActivityS = planning.Blocks.Blocks.Where(b => b.Category == TimeCategory.Activity).Sum(b => b.EndS - b.StartS);
        var waitingFraction = inActivityS > 0 ? Math.Clamp(1 - planning.Blocks.ActivityS / inActivityS, 0, 1) : 0;
        string Label(int i) => planning.Spans[i].Note.Length > 0 ? planning.Spans[i].Note : PlanningWords.Text("Category" + planning.Blocks.Blocks[i].Category, culture);
        var spans = planning.Blocks.Blocks.Select((block, i) => new BlockSpan(
            Label(i), PlanningWords.Text("LineTime", culture, block.StartS / 60, block.EndS / 60), block.StartS, block.EndS,
            block.Category switch { TimeCategory.Activity => Tone.Accent, TimeCategory.Instruction => Tone.Second, _ => Tone.Muted },
            block.Category == TimeCategory.Activity ? waitingFraction : 0)).ToList();
        var doneMin = Math.Ceiling(planning.LastDoneS / 60 - 1e-9);
        var described = string.Join("; ", planning.Blocks.Blocks.Select((b, i) => PlanningWords.Text("LineBlock", culture, Label(i), b.StartS / 60, b.EndS / 60)));
        return BlockLine.Of(
            spans, planning.Plan.AtMatsS > 0 ? new BlockMark(PlanningWords.Text("LineMark", culture), planning.LastDoneS) : null, WidthMm,
            PlanningWords.Text(planning.Plan.AtMatsS > 0 ? "Line" : "LineNoPractice", culture, planning.Blocks.PlannedS / 60, described, doneMin));
    }
}
