using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>Before a set: the levels' numbers to circle, and a guess.</summary>
internal sealed class ChooseCell(
    IReadOnlyList<int> numbers, int levelCount, SheetContent content, PaperWords words)
{
    private const double MostRingMm = 8.6;
    private const double RingGapMm = 1.3;
    private const double MostRingsMm = 42.5;
    private const double LeastWidthMm = 34;
    private const double GuessMm = 8.5;
    private const double GuessWidthMm = 13;
    private const double SpaceMm = 2;
    private const double BetweenMm = 3;

    /// <summary>From a cell's top to the middle of its rings.</summary>
    public const double MiddleMm = MostRingMm / 2;

    private readonly double _stepMm = Math.Min(MostRingMm + RingGapMm, (MostRingsMm + RingGapMm) / Math.Max(levelCount, 1));

    private double RingMm => _stepMm - RingGapMm;

    private string After => content.Predicts == PredictionKind.HoldS ? words["GuessS"] : words.Of("GuessOf", content.TrialCount);

    private double BoxLeftMm => TextMeasure.WidthMm(words["Guess"], TypeScale.BodyPt) + SpaceMm;

    public double WidthMm => Math.Max(
        Math.Max(LeastWidthMm, levelCount * _stepMm - RingGapMm),
        Predicts ? BoxLeftMm + GuessWidthMm + SpaceMm + TextMeasure.WidthMm(After, TypeScale.BodyPt) : 0);

    private bool Predicts => content.Predicts != PredictionKind.Nothing;

    /// <summary>What the cell asks for, as keys of our words.</summary>
    public IEnumerable<string> Asks
    {
        get
        {
            if (numbers.Count > 0) yield return "ChooseHint";
            if (Predicts) yield return "GuessHint";
        }
    }

    public double LeastMm => MostRingMm + (Predicts ? BetweenMm + GuessMm : 0);

    public void DrawOn(Sketch sketch, double left, double top, double height)
    {
        // None to circle: the way agreed with the teacher is written once, above.
        for (var i = 0; i < numbers.Count; i++)
        {
            var (x, y) = (left + i * _stepMm + RingMm / 2, top + MostRingMm / 2);
            sketch.Add(new Disc(x, y, RingMm / 2, Tone.Faint, Sketch.EdgeMm));
            sketch.Centred(x, y, $"{numbers[i]}", TypeScale.BodyPt);
        }
        if (!Predicts) return;

        var boxTop = top + height - GuessMm;
        var middle = boxTop + GuessMm / 2 + TypeScale.HalfCapitalMm(TypeScale.BodyPt);
        var boxLeft = left + BoxLeftMm;
        sketch.Words(left, middle, words["Guess"], TypeScale.BodyPt);
        sketch.Field(boxLeft, boxTop, GuessWidthMm, GuessMm);
        sketch.Words(boxLeft + GuessWidthMm + SpaceMm, middle, After, TypeScale.BodyPt);
    }
}
