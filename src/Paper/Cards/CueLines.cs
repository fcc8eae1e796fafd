using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Cards;

/// <summary>The cues of a card as short lines, with the numbers they have on every sheet.</summary>
internal sealed class CueLines
{
    private const double ColumnGapMm = 6;

    private readonly IReadOnlyList<IReadOnlyList<string>> _lines;
    private readonly TypeScale _type;
    private readonly double _sizePt;
    private readonly double _cellMm;
    private readonly int _perRow;

    private CueLines(IReadOnlyList<string> cues, TypeScale type, double widthMm, double sizePt, int perRow)
    {
        (_type, _sizePt, _perRow) = (type, sizePt, perRow);
        _cellMm = (widthMm - (perRow - 1) * ColumnGapMm) / perRow;
        _lines = [.. cues.Select(cue => type.Lines(cue, _cellMm - SquareMm - AfterMm, sizePt))];
        IsWhole = cues.All(cue => CardScale.HasWholeWords(type, cue, _cellMm - SquareMm - AfterMm, sizePt));
        HeightMm = _lines.Chunk(perRow).Sum(RowMm) + Math.Max(0, (_lines.Count + perRow - 1) / perRow - 1) * GapMm;
    }

    public double HeightMm { get; }

    /// <summary>Whether no word is broken between letters.</summary>
    public bool IsWhole { get; }

    private double SquareMm => _sizePt * 0.44;

    private double AfterMm => _sizePt * 0.16;

    private double GapMm => _sizePt * 0.09;

    /// <summary>In one column or two, whichever takes less height.</summary>
    public static CueLines Of(IReadOnlyList<string> cues, TypeScale type, double widthMm, double sizePt, int mostColumns = 2) =>
        Enumerable.Range(1, Math.Clamp(cues.Count, 1, mostColumns))
            .Select(perRow => new CueLines(cues, type, widthMm, sizePt, perRow))
            .OrderByDescending(l => l.IsWhole)
            .ThenBy(l => l.HeightMm)
            .First();

    /// <summary>Draws them.</summary>
    /// <param name="sketch">The page.</param>
    /// <param name="leftMm">Their left edge.</param>
    /// <param name="topMm">Their top edge.</param>
    /// <param name="roomMm">The height there is; what is more than they need goes between them, within reason.</param>
    public void Draw(Sketch sketch, double leftMm, double topMm, double roomMm)
    {
        var rows = _lines.Chunk(_perRow).ToList();
        var more = rows.Count < 2 ? 0 : Math.Clamp((roomMm - HeightMm) / (rows.Count - 1), 0, _sizePt * 0.5);
        var (top, number) = (topMm, 1);
        foreach (var row in rows)
        {
            for (var i = 0; i < row.Length; i++, number++)
            {
                var left = leftMm + i * (_cellMm + ColumnGapMm);
                sketch.Add(new Box(left + 0.2, top + 0.2, SquareMm - 0.4, SquareMm - 0.4, Tone.Accent, Math.Max(Sketch.EdgeMm, SquareMm * 0.05), SquareMm * 0.18));
                sketch.Centred(left + SquareMm / 2, top + SquareMm / 2, $"{number}", CardScale.NumberPt(_sizePt), Tone.Accent, TextWeight.Bold);
                sketch.Paragraph(left + SquareMm + AfterMm, top + SquareMm / 2 + TypeScale.HalfCapitalMm(_sizePt) - TypeScale.AscentMm(_sizePt), row[i], _sizePt);
            }
            top += RowMm(row) + GapMm + more;
        }
    }

    // The first line's capitals stand in the middle of the square.
    private double RowMm(IReadOnlyList<string>[] row) =>
        Math.Max(SquareMm, row.Max(lines => lines.Count) * _type.LineMm(_sizePt) + SquareMm / 2 + TypeScale.HalfCapitalMm(_sizePt) - TypeScale.AscentMm(_sizePt));
}
