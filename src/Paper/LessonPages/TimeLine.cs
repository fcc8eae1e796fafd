using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.LessonPages;

/// <summary>The planned minutes as a bar, phase by phase, and what happens in each.</summary>
internal sealed class TimeLine(IReadOnlyList<LessonPhase> phases, PageFrame frame, CardWords words)
{
    private const double BarMm = 6;

    // More than this are listed in two columns.
    private const int MostInOneColumn = 4;

    private readonly PageColumns _columns = new(frame);

    public IEnumerable<Block> Blocks(LessonDetail detail)
    {
        if (phases.Count == 0)
        {
            yield return _columns.Block(2.5, (frame.LeftMm, [_columns.Heading(words["Times"]), .. _columns.Lines(words["NoTimes"], frame.RoomMm, tone: Tone.Muted)]));
            yield break;
        }
        yield return _columns.Block(2.5, (frame.LeftMm, [_columns.Heading(words.Of("TimesOf", phases.Sum(p => p.DurationMin)))])) with { StaysWithNext = true };
        yield return new Block(BarMm, (sketch, top, _) => Bar(sketch, top)) { GapMm = 0.8, StaysWithNext = true };
        if (!detail.HasPhaseList) yield break;
        var isTwo = phases.Count > MostInOneColumn;
        var width = isTwo ? _columns.HalfMm : frame.RoomMm;
        var items = phases.Select((p, i) => _columns.Lines(Words(p, detail), width, $"{i + 1}", detail.HasPhaseNotes ? Math.Min(2, detail.MostLineCount) : 1).ToList()).ToList();
        var first = isTwo ? (items.Count + 1) / 2 : items.Count;
        (double, IReadOnlyList<PageLine>) left = (frame.LeftMm, [.. items.Take(first).SelectMany(l => l)]);
        yield return isTwo
            ? _columns.Block(0.8, left, (frame.LeftMm + _columns.HalfMm + PageColumns.GutterMm, [.. items.Skip(first).SelectMany(l => l)]))
            : _columns.Block(0.8, left);
    }

    private string Words(LessonPhase phase, LessonDetail detail)
    {
        var kind = words.Of("PhaseMinutes", phase.DurationMin, words["Phase" + phase.Kind]);
        return detail.HasPhaseNotes && phase.Note.Length > 0 ? $"{kind}: {phase.Note}" : kind;
    }

    // Practice is filled, so that it is seen at a glance how much of the lesson it is; the numbers say the same without colour.
    private void Bar(Sketch sketch, double top)
    {
        var total = phases.Sum(p => p.DurationMin);
        var left = frame.LeftMm;
        for (var i = 0; i < phases.Count; i++)
        {
            var width = frame.RoomMm * phases[i].DurationMin / total;
            sketch.Add(new Box(left, top, width, BarMm, phases[i].Kind == PhaseKind.Activity ? Tone.AccentMiddle : Tone.Ground));
            sketch.Add(new Box(left, top, width, BarMm, Tone.Muted, Sketch.EdgeMm));
            if (frame.Type.WidthMm($"{i + 1}", frame.Type.SmallPt, TextWeight.Bold) + 1 <= width)
                sketch.Centred(left + width / 2, top + BarMm / 2, $"{i + 1}", frame.Type.SmallPt, weight: TextWeight.Bold);
            left += width;
        }
    }
}
