using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>The sets under one another, and in each what it asks under one another: for type too large for columns.</summary>
internal sealed class SetStack(SheetContent content, IReadOnlyList<SetPieces> sets, SheetStyle style)
{
    private const double BetweenMm = 4;
    private const double UnderTitleMm = 1;

    private readonly double _labelMm = All(sets[0]).Max(p => p.LabelMm);

    private double PieceMm => style.Frame.RoomMm - _labelMm;

    public IEnumerable<Block> Blocks()
    {
        var (frame, type) = (style.Frame, style.Type);
        var isFirst = true;
        foreach (var (word, hints) in SetHints.Of(content, sets[0], style))
        {
            yield return Headings.Block(word, string.Join(' ', hints), frame) with { GapMm = isFirst ? 4 : 0.5 };
            isFirst = false;
        }
        for (var set = 1; set <= sets.Count; set++)
        {
            foreach (var block in Set(set)) yield return block;
        }
    }

    // A block a piece: a set stays together where a page has room for it.
    private IEnumerable<Block> Set(int set)
    {
        var (frame, type) = (style.Frame, style.Type);
        var title = new Block(type.LineMm(type.LeadPt) + style.SetPadMm, (sketch, top, _) =>
        {
            sketch.Rule(frame.LeftMm, frame.RightMm, top, Tone.Ink, Sketch.EdgeMm);
            sketch.Paragraph(frame.LeftMm, top + style.SetPadMm, [$"{style.Words["Set"]} {set}"], type.LeadPt, weight: TextWeight.Bold);
        })
        { GapMm = set == 1 ? 4 : 7 };
        var pieces = All(sets[set - 1]).ToList();
        for (var i = 0; i < pieces.Count; i++)
        {
            var piece = pieces[i];
            yield return new Block(
                piece.HeightMm(PieceMm), (sketch, top, _) => piece.DrawOn(sketch, frame.LeftMm + _labelMm, top, PieceMm, _labelMm))
            {
                Head = title,
                GapMm = i == 0 ? UnderTitleMm : BetweenMm,
                // The pupil's own words do not stand on a page alone.
                StaysWithNext = i < pieces.Count - 1 || (set == sets.Count && set > 1),
            };
        }
    }

    private static IEnumerable<SetPiece> All(SetPieces set) => [.. set.Before, .. set.During, .. set.After];
}
