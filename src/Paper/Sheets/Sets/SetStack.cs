using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>The sets under one another, and in each what it asks under one another: for type too large for columns.</summary>
internal sealed class SetStack(SheetContent content, IReadOnlyList<SetPieces> sets, SheetStyle style)
{
    private const double BetweenMm = 4;
    private const double UnderTitleMm = 1;
    private const double StretchMm = 10;

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
        var title = type.LineMm(type.LeadPt) + UnderTitleMm;
        var own = All(sets[0]).ToList();
        var least = 2 * style.SetPadMm + title + own.Sum(p => p.HeightMm(PieceMm)) + (own.Count - 1) * BetweenMm;
        for (var set = 1; set <= sets.Count; set++)
        {
            var number = set;
            yield return new Block(least, (sketch, top, height) =>
            {
                sketch.Rule(frame.LeftMm, frame.RightMm, top, Tone.Ink, Sketch.EdgeMm);
                var y = top + style.SetPadMm;
                sketch.Paragraph(frame.LeftMm, y, [$"{style.Words["Set"]} {number}"], type.LeadPt, weight: TextWeight.Bold);
                y += title;
                var between = BetweenMm + (height - least) / own.Count;
                foreach (var piece in All(sets[number - 1]))
                {
                    piece.DrawOn(sketch, frame.LeftMm + _labelMm, y, PieceMm, _labelMm);
                    y += piece.HeightMm(PieceMm) + between;
                }
            })
            { StretchMm = StretchMm, GapMm = isFirst ? 4 : 3, StaysWithNext = set == sets.Count && set > 1 };
        }
    }

    private static IEnumerable<SetPiece> All(SetPieces set) => [.. set.Before, .. set.During, .. set.After];
}
