using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Cards;

/// <summary>A task in a rectangle, as large as its words allow.</summary>
internal sealed class TaskCard
{
    private const double CautionFraction = 0.65;
    private const double GapFraction = 0.022;

    // Without figures, levels take no more than this many times what they need: the rest goes between the cues.
    private const double AiryFraction = 1.8;

    private readonly CardContent _content;
    private readonly Area _area;
    private readonly PaperWords _words;
    private readonly TypeScale _type;
    private readonly CardScale _scale;
    private readonly Lazy<CardParts?> _largest;

    public TaskCard(CardContent content, Area area, PaperWords words, TypeScale type, CardScale scale)
    {
        (_content, _area, _words, _type, _scale) = (content, area, words, type, scale);
        _largest = new Lazy<CardParts?>(() => Sought(isWhole: true) ?? Sought(isWhole: false));
    }

    /// <summary>Its parts as large as they fit, words unbroken; else as large as they fit; none where nothing does.</summary>
    public CardParts? Largest() => _largest.Value;

    /// <summary>Draws the card as large as it fits.</summary>
    /// <exception cref="InvalidOperationException">Its words do not fit at the least size: a rectangle too small for a task.</exception>
    public void DrawOn(Sketch sketch)
    {
        var parts = Largest() ?? Fitted(CardScale.LeastPt, CardScale.LeastPt, isWhole: false, leastFigureMm: 0)
            ?? throw new InvalidOperationException($"A card of {_area.WidthMm} by {_area.HeightMm} mm has no room for '{_content.Title}'.");
        var gap = GapMm;
        var top = _area.TopMm;
        sketch.Paragraph(_area.LeftMm, top, parts.Title, parts.TitlePt, weight: TextWeight.Bold);
        top += parts.Title.Count * _type.LineMm(parts.TitlePt);
        sketch.Paragraph(_area.LeftMm, top, parts.Purpose, parts.SizePt);
        top += parts.Purpose.Count * _type.LineMm(parts.SizePt) + gap;
        if (parts.Caution.Count > 0)
        {
            CautionSign.Draw(sketch, _area.LeftMm, top + parts.CautionPt * 0.03, SignMm(parts.CautionPt));
            sketch.Paragraph(_area.LeftMm + SignMm(parts.CautionPt) * 1.4, top, parts.Caution, parts.CautionPt, Tone.Caution, TextWeight.Bold);
            top += CautionMm(parts) + gap;
        }
        var bottom = _area.BottomMm;
        if (_content.Levels is not null)
        {
            bottom -= parts.Cues is null ? 0 : parts.Cues.HeightMm + gap;
            if (parts.Tiles is { FigureMm: 0 } plain && parts.Cues is not null) bottom = Math.Min(bottom, top + plain.LeastMm * AiryFraction);
            if (parts.Tiles is { } tiles) new LevelTiles(_content.Levels, _words, _type).Draw(sketch, new Area(_area.LeftMm, top, _area.WidthMm, bottom - top), tiles);
            else sketch.Paragraph(_area.LeftMm, top, _type.Lines(_words["AgreeHint"], _area.WidthMm, parts.SizePt), parts.SizePt);
            top = bottom + gap;
        }
        parts.Cues?.Draw(sketch, _area.LeftMm, top, _area.BottomMm - top);
    }

    private CardParts? Sought(bool isWhole)
    {
        var tried = _scale.CueTimes.Select(times => LargestOf(size => Fitted(size, size * times, isWhole))).ToList();
        // Cues as large as can be while levels stay legible; else the last, in which they are most alike.
        return tried.OfType<CardParts>().Where(p => p.SizePt >= _scale.LevelLeastPt).MaxBy(p => p.CuePt) ?? tried[^1];
    }

    // By halving: what fits at a size is taken to fit at every smaller one. Where a break of a line makes that untrue, the answer still fits.
    private CardParts? LargestOf(Func<double, CardParts?> fitted)
    {
        var sizes = _scale.SizesPt().ToList();
        CardParts? found = null;
        for (var (low, high) = (0, sizes.Count - 1); low <= high;)
        {
            var middle = (low + high) / 2;
            if (fitted(sizes[middle]) is { } parts) (found, high) = (parts, middle - 1);
            else low = middle + 1;
        }
        return found;
    }

    private double GapMm => Math.Max(2, GapFraction * _area.HeightMm);

    private static double SignMm(double sizePt) => sizePt * 0.4;

    private double CautionMm(CardParts parts) => Math.Max(SignMm(parts.CautionPt), parts.Caution.Count * _type.LineMm(parts.CautionPt));

    private CardParts? Fitted(double sizePt, double cuePt, bool isWhole, double? leastFigureMm = null)
    {
        // A caution is never much smaller than what it is a caution for.
        var cautionPt = Math.Max(sizePt, cuePt * CautionFraction);
        var titlePt = Math.Max(sizePt * _scale.TitleTimes, cuePt);
        var cues = _content.Cues.Count == 0 ? null : CueLines.Of(_content.Cues, _type, _area.WidthMm, cuePt, _content.Levels is null ? 1 : 2);
        if (isWhole && cues is { IsWhole: false }) return null;
        if (isWhole && !CardScale.HasWholeWords(_type, _content.Title, _area.WidthMm, titlePt, TextWeight.Bold)) return null;
        var parts = new CardParts(
            sizePt, titlePt, cuePt, cautionPt, _type.Lines(_content.Title, _area.WidthMm, titlePt, TextWeight.Bold), _type.Lines(_content.Purpose, _area.WidthMm, sizePt),
            _type.Lines(_content.Caution, _area.WidthMm - SignMm(cautionPt) * 1.4, cautionPt, TextWeight.Bold), null, cues);
        var room = _area.HeightMm - parts.Title.Count * _type.LineMm(titlePt) - parts.Purpose.Count * _type.LineMm(sizePt) - GapMm
            - (parts.Caution.Count > 0 ? CautionMm(parts) + GapMm : 0) - (cues?.HeightMm ?? 0);
        if (_content.Levels is not { } levels) return room >= 0 ? parts : null;
        if (cues is not null) room -= GapMm;
        if (levels.Count == 0) return room >= _type.Lines(_words["AgreeHint"], _area.WidthMm, sizePt).Count * _type.LineMm(sizePt) ? parts : null;
        var tiles = new LevelTiles(levels, _words, _type).Fit(_area.WidthMm, room, sizePt, leastFigureMm ?? _scale.FigureFraction * _area.HeightMm, isWhole);
        return tiles is null ? null : parts with { Tiles = tiles };
    }
}
