using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Sheets;
using Slantwise.Records.Safety;

namespace Slantwise.Paper.RiskPages;

/// <summary>The parts of a risk page, line by line, so that a page may end between any two.</summary>
internal sealed class RiskBlocks(RiskPage page, PageFrame frame)
{
    private const double PartMm = 3.5;

    private readonly RiskRows _rows = new(frame);

    public IReadOnlyList<Block> All() =>
    [
        .. Opening(),
        .. page.Tasks.SelectMany(t => new RiskTaskBlocks(page, t, frame, _rows).All()),
        .. Checks(),
        .. Restrictions(),
        .. Text("EmergencyHead", page.EmergencyNotes),
        .. Text("NotesHead", page.Notes),
        .. Gaps(),
        SignatureLines.Of(page, frame),
    ];

    private IEnumerable<Block> Opening()
    {
        var type = frame.Type;
        yield return new Block(type.LineMm(type.LongTitlePt), (sketch, top, _) =>
            sketch.Words(frame.LeftMm, top + TypeScale.AscentMm(type.LongTitlePt), page.Say("Title"), type.LongTitlePt, weight: TextWeight.Bold))
        { StaysWithNext = true };
        foreach (var block in _rows.Lines(_rows.Columns.Lines(page.Record.School.Name, frame.RoomMm, tone: Tone.Muted))) yield return block;
        foreach (var block in _rows.Lines(_rows.Columns.Lines(page.Say("LocalRules"), frame.RoomMm, isBold: true), 1.5)) yield return block;
        foreach (var block in _rows.Lines(_rows.Columns.Lines(page.Say("Rule"), frame.RoomMm))) yield return block;
    }

    private IEnumerable<Block> Checks()
    {
        yield return _rows.Heading(page.Say("ChecksHead"), PartMm);
        foreach (var block in _rows.Grid([.. page.ProposedChecks, .. page.OwnChecks])) yield return block;
    }

    private IEnumerable<Block> Restrictions()
    {
        yield return _rows.Heading(page.Say("RestrictionsHead"), PartMm);
        IReadOnlyList<string> names = FirstNames.Of(page.NamedPupils, Labels.Of);
        IEnumerable<string> lines = names.Count > 0 ? [.. page.RestrictionLines, page.Say("NamesAre", string.Join(", ", names))] : page.RestrictionLines;
        foreach (var block in _rows.Lines(lines.SelectMany(l => _rows.Columns.Lines(l, frame.RoomMm)))) yield return block;
    }

    // What was written in paragraphs stays in paragraphs.
    private IEnumerable<Block> Text(string heading, string text)
    {
        if (string.IsNullOrWhiteSpace(text)) yield break;
        yield return _rows.Heading(page.Say(heading), PartMm);
        foreach (var block in _rows.Lines(text.Split('\n').SelectMany(line => _rows.Columns.Lines(line, frame.RoomMm)))) yield return block;
    }

    private IEnumerable<Block> Gaps()
    {
        if (page.Gaps.Count == 0) yield break;
        yield return _rows.Heading(page.Say("GapsHead"), PartMm);
        foreach (var block in _rows.Lines(page.Gaps.SelectMany(g => _rows.Columns.Lines(g.Sentence, frame.RoomMm, PageLine.Box)))) yield return block;
    }
}
