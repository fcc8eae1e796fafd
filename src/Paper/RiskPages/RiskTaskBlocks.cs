using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.LessonPages;
using Slantwise.Records.Safety;

namespace Slantwise.Paper.RiskPages;

/// <summary>A task on a risk page: its level of risk, what is done about it, what holds in every case.</summary>
internal sealed class RiskTaskBlocks(RiskPage page, RiskTask task, PageFrame frame, RiskRows rows)
{
    private const double PartMm = 5;
    private const double ChipMm = 36;
    private const double ChipPadMm = 1.2;
    private const double GutterMm = 4;

    private PageColumns Columns => rows.Columns;

    public IEnumerable<Block> All()
    {
        yield return Head();
        foreach (var block in Staying(rows.Lines(Columns.Lines(Because(), frame.RoomMm, tone: Tone.Muted)))) yield return block;
        List<PageLine> controls = [Columns.Heading(page.Say("ControlsHead")), .. task.Controls.SelectMany(c => Columns.Lines(c, Columns.HalfMm, PageLine.Box))];
        if (task.Controls.Count == 0) controls = [];
        List<PageLine> holds =
        [
            .. Columns.Lines(task.Caution, Columns.HalfMm, "!", isBold: true, tone: Tone.Caution),
            .. task.PolicyLines.Concat(task.Questions).SelectMany(l => Columns.Lines(l, Columns.HalfMm, "–")),
        ];
        if (holds.Count > 0) holds.Insert(0, Columns.Heading(page.Say("HoldsHead")));
        var beside = controls.Count > 0 ? rows.Beside(controls, holds, 1) : rows.Lines(holds, 1);
        var first = true;
        foreach (var block in beside)
        {
            yield return first ? block with { StaysWithNext = true } : block;
            first = false;
        }
        // What hurt somebody is on the desk; a page that lies about in a hall shows near misses only.
        var earlier = task.Earlier.Where(i => i.Kind == IncidentKind.NearMiss).ToList();
        if (earlier.Count == 0) yield break;
        yield return rows.Heading(page.Say("EarlierHead"), 1.5);
        foreach (var incident in earlier)
            foreach (var block in rows.Lines(Columns.Lines(Said(incident), frame.RoomMm, "–"))) yield return block;
    }

    private string Because() => task.OwnLevel is null ? task.Because : page.Say("OwnLevel", LevelOf(task.ProposedLevel));

    private string Said(Incident incident)
    {
        var said = page.Say("Earlier", incident.Day.ToString("d", page.Culture), page.Say("Kind" + incident.Kind), incident.Happened);
        return incident.Changed.Length > 0 ? $"{said} {page.Say("EarlierChanged", incident.Changed)}" : said;
    }

    private string LevelOf(RiskLevel? level) => level is { } known ? page.Say("Level" + known) : page.Say("LevelNone");

    private Block Head()
    {
        var (type, size) = (frame.Type, frame.Type.LeadPt);
        var name = page.Tasks.Count == 1 ? task.Name : $"{task.Number}  {task.Name}";
        var lines = type.Lines(name, frame.RoomMm - ChipMm - GutterMm, size, TextWeight.Bold);
        var chipHeight = type.LineMm(type.BodyPt) + 2 * ChipPadMm;
        return new Block(Math.Max(chipHeight, lines.Count * type.LineMm(size)), (sketch, top, _) =>
        {
            sketch.Rule(frame.LeftMm, frame.RightMm, top - PartMm / 2.4, Tone.Muted);
            sketch.Paragraph(frame.LeftMm, top + (chipHeight - type.LineMm(size)) / 2, lines, size, weight: TextWeight.Bold);
            Chip(sketch, frame.RightMm - ChipMm, top, chipHeight);
        })
        { GapMm = PartMm, StaysWithNext = true };
    }

    // Word, fill and frame say the same, so that a grey print loses nothing.
    private void Chip(Sketch sketch, double leftMm, double topMm, double heightMm)
    {
        var (fill, ink) = task.Level switch
        {
            RiskLevel.High => (Tone.Ink, Tone.Ground),
            RiskLevel.Medium => (Tone.AccentSoft, Tone.Ink),
            _ => (Tone.Ground, Tone.Ink),
        };
        sketch.Add(new Box(leftMm, topMm, ChipMm, heightMm, fill));
        sketch.Add(new Box(leftMm, topMm, ChipMm, heightMm, Tone.Ink, Sketch.EdgeMm));
        sketch.Centred(leftMm + ChipMm / 2, topMm + heightMm / 2, LevelOf(task.Level), frame.Type.BodyPt, ink, TextWeight.Bold);
    }

    private static IEnumerable<Block> Staying(IEnumerable<Block> blocks) => blocks.Select(b => b with { StaysWithNext = true });
}
