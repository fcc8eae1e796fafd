using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Postures;

namespace Slantwise.Paper.Cards;

/// <summary>The levels of a card side by side, all alike: figure, how it is done, how much of it. No numbers.</summary>
internal sealed class LevelTiles(IReadOnlyList<OfferedLevel> offered, PaperWords words, TypeScale type)
{
    private const double GutterMm = 3;
    private const double PadMm = 2.5;
    private const double NarrowestFigureFraction = 0.7;

    private readonly bool _hasFigures = offered.Any(o => o.Level.Posture is { } key && PostureLibrary.Find(key) is not null);

    /// <summary>How the levels stand in a room at a size of type: the arrangement with the largest figures. None where they do not fit.</summary>
    /// <param name="widthMm">The room's width.</param>
    /// <param name="heightMm">The room's height.</param>
    /// <param name="sizePt">The size of the words.</param>
    /// <param name="leastFigureMm">The least height of a figure, where there are any.</param>
    /// <param name="isWhole">Whether words may not be broken between letters.</param>
    public TileFit? Fit(double widthMm, double heightMm, double sizePt, double leastFigureMm, bool isWhole) => Enumerable.Range(1, offered.Count)
        .Select(rowCount => (offered.Count + rowCount - 1) / rowCount)
        .Distinct()
        .Select(perRow => Arranged(perRow, widthMm, heightMm, sizePt, isWhole))
        .OfType<TileFit>()
        .Where(fit => !_hasFigures || fit.FigureMm >= leastFigureMm)
        .MaxBy(fit => _hasFigures ? Math.Min(fit.FigureMm, fit.TileMm / NarrowestFigureFraction) : fit.PerRow);

    public void Draw(Sketch sketch, Area area, TileFit fit)
    {
        var figures = new LevelFigures(offered, Math.Max(fit.FigureMm, 5));
        var rowCount = (offered.Count + fit.PerRow - 1) / fit.PerRow;
        var height = (area.HeightMm - (rowCount - 1) * GutterMm) / rowCount;
        for (var i = 0; i < offered.Count; i++)
        {
            var (left, top) = (area.LeftMm + i % fit.PerRow * (fit.TileMm + GutterMm), area.TopMm + i / fit.PerRow * (height + GutterMm));
            sketch.Field(left, top, fit.TileMm, height, 2.5);
            if (figures.IsAny)
                foreach (var shape in figures.At(offered[i], left + 1, top + PadMm, fit.TileMm - 2)) sketch.Add(shape);
            var (names, doses) = (NameLines(i, fit.TileMm, fit.SizePt), DoseLines(i, fit.TileMm, fit.SizePt));
            var dosesTop = top + height - PadMm - doses.Count * type.LineMm(fit.SizePt);
            // With a figure the words stand under it; without, in the middle of what is left.
            var namesTop = figures.IsAny ? top + PadMm + fit.FigureMm + PadMm : top + PadMm + Math.Max(0, dosesTop - top - PadMm - names.Count * type.LineMm(fit.SizePt)) / 2;
            sketch.Paragraph(left + fit.TileMm / 2, namesTop, names, fit.SizePt, anchor: TextAnchor.Middle);
            sketch.Paragraph(left + fit.TileMm / 2, dosesTop, doses, fit.SizePt, Tone.Accent, TextWeight.Bold, TextAnchor.Middle);
        }
    }

    private IReadOnlyList<string> NameLines(int i, double tileMm, double sizePt) => type.Lines(offered[i].Level.Name, tileMm - 2 * PadMm, sizePt);

    private IReadOnlyList<string> DoseLines(int i, double tileMm, double sizePt) =>
        type.Lines(words.Dose(offered[i].Level.Dose), tileMm - 2 * PadMm, sizePt, TextWeight.Bold);

    private TileFit? Arranged(int perRow, double widthMm, double heightMm, double sizePt, bool isWhole)
    {
        var rowCount = (offered.Count + perRow - 1) / perRow;
        var tile = (widthMm - (perRow - 1) * GutterMm) / perRow;
        var room = tile - 2 * PadMm;
        if (isWhole && !offered.All(o => CardScale.HasWholeWords(type, o.Level.Name, room, sizePt)
            && CardScale.HasWholeWords(type, words.Dose(o.Level.Dose), room, sizePt, TextWeight.Bold))) return null;
        var lines = Enumerable.Range(0, offered.Count).Max(i => NameLines(i, tile, sizePt).Count)
            + Enumerable.Range(0, offered.Count).Max(i => DoseLines(i, tile, sizePt).Count);
        var text = lines * type.LineMm(sizePt) + (_hasFigures ? 3.5 : 3) * PadMm;
        var left = (heightMm - (rowCount - 1) * GutterMm) / rowCount - text;
        return left < 0 ? null : new TileFit(perRow, tile, sizePt, _hasFigures ? left : 0, rowCount * text + (rowCount - 1) * GutterMm);
    }
}
