using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Paper.Cards;

/// <summary>One cue in a rectangle: its words, a figure, and what a performer can feel in the figure's shape.</summary>
/// <param name="TaskName">The task the cue belongs to.</param>
/// <param name="Number">Its number on every sheet.</param>
/// <param name="Cue">Its words.</param>
/// <param name="Shown">The posture of one of the task's levels; none where no level shows one.</param>
internal sealed record CueCard(string TaskName, int Number, string Cue, SettledPosture? Shown)
{
    private const double MostPt = 34;
    private const double ClearPt = 16;
    private const double StepFraction = 0.96;
    private const double FigureFraction = 0.34;
    private const double GapMm = 3;
    private const double LeastPt = CardScale.LeastPt;

    public void DrawOn(Sketch sketch, Area area, CardWords words, PaperOptions options, TypeScale type)
    {
        var names = type.Lines(TaskName, area.WidthMm, LeastPt).Take(2).ToList();
        sketch.Paragraph(area.LeftMm, area.TopMm, names, LeastPt, Tone.Muted);
        var top = area.TopMm + names.Count * type.LineMm(LeastPt) + GapMm / 2;

        var feel = Felt(words, options, area, type);
        // What is ours to say gives way to what the teacher wrote.
        if (Largest(area, top, feel, type) is null or < ClearPt) feel = [];
        var sizePt = Largest(area, top, feel, type) ?? LeastPt;
        var feelMm = FeelMm(feel, type);
        var bottom = area.BottomMm - feelMm;
        if (Shown is { } posture)
        {
            var box = new FigureOptions(PostureFigure.SharedView([posture]), FigureMm(area), Math.Max(PostureFigure.SmallestMm, bottom - top));
            foreach (var shape in PostureFigure.Of(posture, box, "").Scene.Shapes) sketch.Add(ShapeMove.By(shape, area.LeftMm, top));
        }
        var left = TextLeft(area);
        var cues = Lines(area, sizePt, type);
        var square = SquareMm(sizePt);
        var first = top + Math.Max(0, bottom - top - TextMm(cues, sizePt, type)) / 2;
        sketch.Add(new Box(left + 0.2, first + 0.2, square - 0.4, square - 0.4, Tone.Accent, Math.Max(Sketch.EdgeMm, square * 0.05), square * 0.18));
        sketch.Centred(left + square / 2, first + square / 2, $"{Number}", CardScale.NumberPt(sizePt), Tone.Accent, TextWeight.Bold);
        sketch.Paragraph(left + square * 1.3, first + square / 2 + TypeScale.HalfCapitalMm(sizePt) - TypeScale.AscentMm(sizePt), cues, sizePt, weight: TextWeight.Bold);
        sketch.Paragraph(area.LeftMm, area.BottomMm - feel.Count * type.LineMm(LeastPt), feel, LeastPt, Tone.Muted);
    }

    private IReadOnlyList<string> Felt(CardWords words, PaperOptions options, Area area, TypeScale type) => Shown is { } posture
        ? type.Lines(words.Of("Feel", PostureDescription.Of(posture, options.Language)), area.WidthMm, LeastPt)
        : [];

    private double? Largest(Area area, double top, IReadOnlyList<string> feel, TypeScale type)
    {
        var room = area.BottomMm - FeelMm(feel, type) - top;
        double? broken = null;
        for (var size = MostPt; size >= LeastPt; size = size > LeastPt ? Math.Max(LeastPt, size * StepFraction) : 0)
        {
            if (TextMm(Lines(area, size, type), size, type) > room) continue;
            if (CardScale.HasWholeWords(type, Cue, LineMm(area, size), size, TextWeight.Bold)) return size;
            broken ??= size;
        }
        return broken;
    }

    private static double FeelMm(IReadOnlyList<string> feel, TypeScale type) => feel.Count == 0 ? 0 : feel.Count * type.LineMm(LeastPt) + GapMm / 2;

    private static double SquareMm(double sizePt) => sizePt * 0.44;

    private static double FigureMm(Area area) => area.WidthMm * FigureFraction;

    private double TextLeft(Area area) => area.LeftMm + (Shown is null ? 0 : FigureMm(area) + GapMm);

    private double LineMm(Area area, double sizePt) => area.RightMm - TextLeft(area) - SquareMm(sizePt) * 1.3;

    private IReadOnlyList<string> Lines(Area area, double sizePt, TypeScale type) => type.Lines(Cue, LineMm(area, sizePt), sizePt, TextWeight.Bold);

    private static double TextMm(IReadOnlyList<string> lines, double sizePt, TypeScale type) =>
        Math.Max(SquareMm(sizePt), lines.Count * type.LineMm(sizePt) + SquareMm(sizePt) / 2 + TypeScale.HalfCapitalMm(sizePt) - TypeScale.AscentMm(sizePt));
}
