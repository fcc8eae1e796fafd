using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Sheets;

/// <summary>After a set: the cues to tick, what comes next, and why.</summary>
internal sealed class DecideCell
{
    private const double SquareMm = 6.6;
    private const double SquareGapMm = 2.6;
    private const double PillMm = 7;
    private const double PillGapMm = 1.2;
    private const double PillPadMm = 1.6;
    private const double BetweenMm = 1.8;
    private const double BecauseMm = 7;

    private readonly int _cueCount;
    private readonly double _widthMm;
    private readonly PaperWords _words;
    private readonly List<List<string>> _pillRows;

    public DecideCell(int cueCount, double widthMm, PaperWords words)
    {
        (_cueCount, _widthMm, _words) = (cueCount, widthMm, words);
        _pillRows = Flowed([words["Easier"], words["Same"], words["Harder"]]);
    }

    public double LeastMm => CuesMm + PillsMm + BetweenMm + BecauseMm;

    private double CuesMm => _cueCount == 0 ? 0 : SquareMm + BetweenMm;

    private double PillsMm => _pillRows.Count * PillMm + (_pillRows.Count - 1) * PillGapMm;

    public void DrawOn(Sketch sketch, double left, double top, double height)
    {
        var spare = Math.Max(0, height - LeastMm);
        for (var i = 0; i < _cueCount; i++)
        {
            var x = left + i * (SquareMm + SquareGapMm);
            sketch.Field(x, top, SquareMm, SquareMm);
            sketch.Centred(x + SquareMm / 2, top + SquareMm / 2, $"{i + 1}", TypeScale.SmallPt, Tone.Muted);
        }
        var y = top + CuesMm + (_cueCount == 0 ? 0 : spare * 0.35);
        foreach (var row in _pillRows)
        {
            var x = left;
            foreach (var word in row)
            {
                sketch.Field(x, y, PillWidthMm(word), PillMm, PillMm / 2);
                sketch.Centred(x + PillWidthMm(word) / 2, y + PillMm / 2, word, TypeScale.BodyPt);
                x += PillWidthMm(word) + PillGapMm;
            }
            y += PillMm + PillGapMm;
        }
        var line = top + height;
        sketch.Words(left, line - TypeScale.LineMm(TypeScale.SmallPt) + TypeScale.AscentMm(TypeScale.SmallPt), _words["Because"], TypeScale.SmallPt, Tone.Muted);
        sketch.Rule(left + TextMeasure.WidthMm(_words["Because"], TypeScale.SmallPt) + 2, left + _widthMm, line, Tone.Faint, Sketch.EdgeMm);
    }

    private static double PillWidthMm(string word) => TextMeasure.WidthMm(word, TypeScale.BodyPt) + 2 * PillPadMm;

    private List<List<string>> Flowed(IEnumerable<string> words)
    {
        var rows = new List<List<string>> { new() };
        var used = 0.0;
        foreach (var word in words)
        {
            if (used > 0 && used + PillWidthMm(word) > _widthMm)
            {
                rows.Add([]);
                used = 0;
            }
            rows[^1].Add(word);
            used += PillWidthMm(word) + PillGapMm;
        }
        return rows;
    }
}
