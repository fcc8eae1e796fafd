using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Sheets;
using Slantwise.Records.Roster;
using Slantwise.Records.Safety;

namespace Slantwise.Paper.RiskPages;

/// <summary>The parts of a risk page, line by line, so that a page may end between any two.</summary>
internal sealed class RiskBlocks(RiskPage page, PageFrame frame)
{
    private const double PartMm = 3;
    private const double SchoolFraction = 0.6;

    private readonly RiskRows _rows = new(frame);

    public IReadOnlyList<Block> All() =>
    [
        .. Opening(),
        .. page.Tasks.SelectMany(t => new RiskTaskBlocks(page, t, frame, _rows).All()),
        .. Checks(),
        .. Restrictions(),
        .. Written("EmergencyHead", page.EmergencyNotes),
        .. Written("NotesHead", page.Notes),
        .. Gaps(),
        SignatureLines.Of(page, frame),
    ];

    private IEnumerable<Block> Opening()
    {
        var (type, size, small) = (frame.Type, frame.Type.LongTitlePt, frame.Type.SmallPt);
        var school = type.Lines(page.Record.School.Name, frame.RoomMm * SchoolFraction, small);
        // The school's last line stands on the title's own.
        var above = Math.Max(0, school.Count - 1) * type.LineMm(small);
        yield return new Block(above + type.LineMm(size), (sketch, top, _) =>
        {
            var baseline = top + above + TypeScale.AscentMm(size);
            sketch.Words(frame.LeftMm, baseline, page.Say("Title"), size, weight: TextWeight.Bold);
            for (var i = 0; i < school.Count; i++)
                sketch.Words(frame.RightMm, baseline - (school.Count - 1 - i) * type.LineMm(small), school[i], small, Tone.Muted, anchor: TextAnchor.End);
        })
        { StaysWithNext = true };
        foreach (var block in _rows.Texts([page.Say("LocalRules")], isBold: true, gapMm: 0.5)) yield return block;
        foreach (var block in _rows.Texts([page.Say("Rule")])) yield return block;
    }

    private IEnumerable<Block> Checks() => [_rows.Heading(page.Say("ChecksHead"), PartMm), .. _rows.Grid([.. page.ProposedChecks, .. page.OwnChecks], PageLine.Box)];

    private IEnumerable<Block> Restrictions()
    {
        var names = FirstNames.Of(page.NamedPupils, Labels.Of);
        IEnumerable<string> lines = names.Count > 0 ? [.. page.RestrictionLines, page.Say("NamesAre", string.Join(", ", names))] : page.RestrictionLines;
        return [_rows.Heading(page.Say("RestrictionsHead"), PartMm), .. _rows.Texts(lines)];
    }

    // What was written in paragraphs stays in paragraphs.
    private IEnumerable<Block> Written(string heading, string text) =>
        string.IsNullOrWhiteSpace(text) ? [] : [_rows.Heading(page.Say(heading), PartMm), .. _rows.Texts(text.Split('\n'))];

    private IEnumerable<Block> Gaps() =>
        page.Gaps.Count == 0 ? [] : [_rows.Heading(page.Say("GapsHead"), PartMm), .. _rows.Texts(page.Gaps.Select(g => g.Sentence), PageLine.Box)];
}
