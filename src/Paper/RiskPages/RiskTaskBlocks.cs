using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Words;
using Slantwise.Records.Safety;

namespace Slantwise.Paper.RiskPages;

/// <summary>A task on a risk page: its level of risk, what holds in every case, what is done about it.</summary>
internal sealed class RiskTaskBlocks(RiskPage page, RiskTask task, PageFrame frame, RiskRows rows)
{
    private const double PartMm = 4.5;
    private const double RuleMm = 1.9;
    private const double ChipMm = 36;
    private const double ChipPadMm = 1;
    private const double GutterMm = 4;

    public IEnumerable<Block> All()
    {
        yield return Head();
        // The first line of what follows stays with the name.
        foreach (var block in rows.Texts([Because()], tone: Tone.Muted, gapMm: 0.6)) yield return block with { StaysWithNext = true };
        foreach (var block in rows.Texts([task.Caution], "!", isBold: true, tone: Tone.Caution)) yield return block;
        foreach (var block in task.PolicyLines.Count > 1 ? rows.Grid(task.PolicyLines, "–") : rows.Texts(task.PolicyLines, "–")) yield return block;
        foreach (var block in rows.Texts(task.Questions, "?")) yield return block;
        if (task.Controls.Count > 0)
        {
            yield return rows.Heading(page.Say("ControlsHead"), 1);
            foreach (var block in rows.Grid(task.Controls, PageLine.Box)) yield return block;
        }
        // What hurt somebody stays on the desk; a page that lies about in a hall shows near misses only.
        var earlier = task.Earlier.Where(i => i.Kind == IncidentKind.NearMiss).Select(Said).ToList();
        if (earlier.Count == 0) yield break;
        yield return rows.Heading(page.Say("EarlierHead"), 1);
        foreach (var block in rows.Texts(earlier, "–")) yield return block;
    }

    private string Because()
    {
        var why = task.OwnLevel is null ? task.Because : page.Say("OwnLevel", LevelOf(task.ProposedLevel));
        return task.Level is { } level ? $"{page.Say("LevelAbout" + level)} {why}" : why;
    }

    private string Said(Incident incident)
    {
        var said = page.Say("Earlier", new PaperWords(page.Culture).Date(incident.Day), page.Say("Kind" + incident.Kind), incident.Happened);
        return incident.Changed.Length > 0 ? $"{said} {page.Say("EarlierChanged", incident.Changed)}" : said;
    }

    private string LevelOf(RiskLevel? level) => level is { } known ? page.Say("Level" + known) : page.Say("LevelNone");

    private Block Head()
    {
        var (type, size) = (frame.Type, frame.Type.LeadPt);
        var name = page.Tasks.Count == 1 ? task.Name : $"{task.Number}  {task.Name}";
        var lines = type.Lines(name, frame.RoomMm - ChipMm - GutterMm, size, TextWeight.Bold);
        var chipHeight = type.LineMm(type.BodyPt) + 2 * ChipPadMm;
        var lift = Math.Max(0, (chipHeight - type.LineMm(size)) / 2);
        return new Block(Math.Max(chipHeight, lift + lines.Count * type.LineMm(size)), (sketch, top, _) =>
        {
            sketch.Rule(frame.LeftMm, frame.RightMm, top - RuleMm, Tone.Muted);
            sketch.Paragraph(frame.LeftMm, top + lift, lines, size, weight: TextWeight.Bold);
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
}
