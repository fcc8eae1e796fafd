using Slantwise.Engines.Drawing;
using Slantwise.Paper.Cards;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Posters;

/// <summary>The way of a set in four drawn steps: choose, say what you think, try and check, decide.</summary>
internal sealed class SetSteps(CardWords words, PaperWords paperWords, TypeScale type, string guess)
{
    private const double PictureFraction = 0.48;
    private const double MostPt = 60;
    private const double StepFraction = 0.96;
    private const double PadFraction = 0.06;

    // Without a prediction on the sheet there is nothing to say before trying.
    private IReadOnlyList<string> Steps => guess.Length > 0 ? ["Choose", "Think", "Try", "Decide"] : ["Choose", "Try", "Decide"];

    /// <summary>Draws the steps in two rows of two, read across; no step stands across the middle.</summary>
    public void DrawOn(Sketch sketch, Area sheet, double borderMm)
    {
        var cells = Enumerable.Range(0, Steps.Count).Select(i => Cell(sheet, borderMm, i)).ToList();
        var headPt = Sizes().First(size => Steps.Zip(cells).All(s => type.WidthMm(words[$"Step{s.First}"], size, TextWeight.Bold) <= s.Second.WidthMm * 0.9 - Disc(size) * 2.4));
        headPt = Math.Min(headPt, cells[0].HeightMm * 0.42);
        var bodyPt = Sizes().First(size => size <= headPt && Steps.Zip(cells).All(s => Body(s.First, s.Second, size).Count * type.LineMm(size) <= BodyRoomMm(s.Second, headPt))
            || size == CardScale.LeastPt);
        for (var i = 0; i < Steps.Count; i++) Draw(sketch, Steps[i], i + 1, cells[i], headPt, bodyPt);
    }

    private static IEnumerable<double> Sizes()
    {
        for (var size = MostPt; size > CardScale.LeastPt; size *= StepFraction) yield return size;
        yield return CardScale.LeastPt;
    }

    // White at the paper's edges as on every page, half of it on either side of the joint and between the steps.
    private static Area Cell(Area sheet, double borderMm, int i)
    {
        var (width, height) = (sheet.WidthMm / 2, sheet.HeightMm / 2);
        var (column, row) = (i % 2, i / 2);
        var (left, top) = (column * width + (column == 0 ? borderMm : borderMm / 2), row * height + (row == 0 ? borderMm : borderMm / 2));
        return new Area(left, top, width - 1.5 * borderMm, height - 1.5 * borderMm);
    }

    private static double Disc(double sizePt) => sizePt * 0.26;

    private static Area Pad(Area cell) => cell.Inside(cell.HeightMm * PadFraction);

    private IReadOnlyList<string> Body(string step, Area cell, double sizePt) => type.Lines(words[$"Step{step}Hint"], Pad(cell).WidthMm, sizePt);

    private double BodyRoomMm(Area cell, double headPt) => Pad(cell).HeightMm * (1 - PictureFraction) - Disc(headPt) * 2 - Pad(cell).HeightMm * 0.08;

    private void Draw(Sketch sketch, string step, int number, Area cell, double headPt, double bodyPt)
    {
        sketch.Field(cell.LeftMm, cell.TopMm, cell.WidthMm, cell.HeightMm, 4);
        var pad = Pad(cell);
        var disc = Disc(headPt);
        sketch.Add(new Disc(pad.LeftMm + disc, pad.TopMm + disc, disc, Tone.Accent));
        sketch.Centred(pad.LeftMm + disc, pad.TopMm + disc, $"{number}", headPt * 0.9, Tone.Ground, TextWeight.Bold);
        sketch.Words(pad.LeftMm + disc * 2.4, pad.TopMm + disc + TypeScale.HalfCapitalMm(headPt), words[$"Step{step}"], headPt, weight: TextWeight.Bold);
        var picture = new Area(pad.LeftMm, pad.TopMm + disc * 2 + pad.HeightMm * 0.05, pad.WidthMm, pad.HeightMm * PictureFraction);
        switch (step)
        {
            case "Choose": StepPictures.Choose(sketch, picture); break;
            case "Think": StepPictures.Think(sketch, picture, guess); break;
            case "Try": StepPictures.Try(sketch, picture); break;
            default: StepPictures.Decide(sketch, picture, [paperWords["Easier"], paperWords["Same"], paperWords["Harder"]], type); break;
        }
        var body = Body(step, cell, bodyPt);
        sketch.Paragraph(pad.LeftMm, pad.BottomMm - body.Count * type.LineMm(bodyPt), body, bodyPt);
    }
}
