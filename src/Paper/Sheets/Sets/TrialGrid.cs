using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>A column a trial: managed, not yet, and the seconds where they are asked for. Nothing marked is a trial that was not made.</summary>
internal sealed class TrialGrid(SheetStyle style, int task, int set, int trialCount, bool isHeld, bool hasSeconds) : SetPiece(style)
{
    private const int MostInRow = 5;
    private const double BetweenRowsMm = 1.8;
    private const double BetweenStacksMm = 2.4;
    private const double SecondsGapMm = 1.6;

    private readonly string _held = style.Words[isHeld ? "Held" : "Managed"];
    private readonly string _notYet = style.Words["NotYet"];
    private readonly string _seconds = style.Words["GuessS"];

    public override double LabelMm => new[]
    {
        LabelWidthMm(Sign.Tick, _held), LabelWidthMm(Sign.Ring, _notYet), hasSeconds ? LabelWidthMm(Sign.None, _seconds) : 0,
    }.Max();

    public override double WidthMm => Math.Min(trialCount, MostInRow) * PitchMm - (PitchMm - CellMm);

    private double PitchMm => hasSeconds ? Math.Max(Style.PitchMm, SecondsMm + SecondsGapMm) : Style.PitchMm;

    private double CellMm => hasSeconds ? SecondsMm : Style.FieldMm;

    // Two digits in a child's hand.
    private double SecondsMm => Style.FieldMm * 1.5;

    private double SecondsHighMm => SecondsMm * 0.85;

    private double StackMm => OverMm + 2 * Style.FieldMm + BetweenRowsMm + (hasSeconds ? BetweenRowsMm + SecondsHighMm : 0);

    private int StackCount(double widthMm)
    {
        var perRow = Math.Max(1, (int)((widthMm + PitchMm - CellMm + 0.01) / PitchMm));
        return (trialCount + perRow - 1) / perRow;
    }

    public override double HeightMm(double widthMm) => StackCount(widthMm) * (StackMm + BetweenStacksMm) - BetweenStacksMm;

    public override void DrawOn(Sketch sketch, double left, double top, double width, double labelMm)
    {
        var stacks = StackCount(width);
        var perRow = (trialCount + stacks - 1) / stacks;
        for (var stack = 0; stack < stacks; stack++)
        {
            var held = top + stack * (StackMm + BetweenStacksMm) + OverMm;
            var notYet = held + Style.FieldMm + BetweenRowsMm;
            var seconds = notYet + Style.FieldMm + BetweenRowsMm;
            LabelOn(sketch, Sign.Tick, _held, left - labelMm, held + Style.FieldMm / 2);
            LabelOn(sketch, Sign.Ring, _notYet, left - labelMm, notYet + Style.FieldMm / 2);
            if (hasSeconds) LabelOn(sketch, Sign.None, _seconds, left - labelMm, seconds + SecondsHighMm / 2);
            for (var i = stack * perRow; i < Math.Min(trialCount, (stack + 1) * perRow); i++)
            {
                var x = left + i % perRow * PitchMm;
                var field = x + (CellMm - Style.FieldMm) / 2;
                NumberOn(sketch, field + Style.FieldMm / 2, held, $"{i + 1}", Tone.Muted, TextWeight.Regular);
                sketch.Mark(new SheetField(SheetFieldKind.Held, task, set, i + 1), field, held, Style.FieldMm, isRound: false);
                sketch.Mark(new SheetField(SheetFieldKind.NotYet, task, set, i + 1), field, notYet, Style.FieldMm, isRound: false);
                if (!hasSeconds) continue;
                sketch.Field(x, seconds, SecondsMm, SecondsHighMm);
                sketch.Writing(new SheetField(SheetFieldKind.Seconds, task, set, i + 1), x, seconds, SecondsMm, SecondsHighMm);
            }
        }
    }
}
