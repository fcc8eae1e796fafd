using System.Globalization;
using Slantwise.Records.Scans;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>What one set asks: before it, during it, after it.</summary>
internal sealed record SetPieces(IReadOnlyList<SetPiece> Before, IReadOnlyList<SetPiece> During, IReadOnlyList<SetPiece> After)
{
    public static SetPieces Of(SheetContent content, SheetTask task, int taskNumber, int set, IReadOnlyList<OfferedLevel> offered, SheetStyle style) =>
        new(BeforeOf(content, task, taskNumber, set, offered, style), [TrialsOf(content, task, taskNumber, set, style)], AfterOf(task, taskNumber, set, style));

    /// <summary>Whether a task is about staying: its trials are held, not managed.</summary>
    public static bool IsHeld(SheetTask task) => task.Levels.Any(l => l.Dose.Kind == DoseKind.HoldS);

    private static List<SetPiece> BeforeOf(
        SheetContent content, SheetTask task, int taskNumber, int set, IReadOnlyList<OfferedLevel> offered, SheetStyle style)
    {
        var pieces = new List<SetPiece>();
        // With none offered its room stays empty: the way agreed with the teacher is written once, above, and all else stands where it always does.
        if (task.Levels.Count > 0)
        {
            // Numbered without a gap for whoever is offered fewer; the field knows the sheet's number.
            var levels = offered.Select((l, i) => ($"{i + 1}", new SheetField(SheetFieldKind.Level, taskNumber, set, l.Number)));
            pieces.Add(new FieldRow(style, [.. levels], task.Levels.Count) { IsOfCards = true, Label = offered.Count > 0 ? InStack("LevelLabel", style) : "" });
        }
        var predicted = Predictions.Of(content, task);
        if (predicted.Count == 0) return pieces;
        var guesses = predicted.Select(n => (n.ToString(CultureInfo.InvariantCulture), new SheetField(SheetFieldKind.Predicted, taskNumber, set, n)));
        pieces.Add(new FieldRow(style, [.. guesses], predicted.Count) { Label = style.Words["Guess"], LabelSign = Sign.Target });
        return pieces;
    }

    private static TrialGrid TrialsOf(SheetContent content, SheetTask task, int taskNumber, int set, SheetStyle style) =>
        new(style, taskNumber, set, content.TrialCount, IsHeld(task), IsHeld(task) && content.Predicts == PredictionKind.HoldS);

    private static List<SetPiece> AfterOf(SheetTask task, int taskNumber, int set, SheetStyle style)
    {
        var pieces = new List<SetPiece>();
        if (task.Cues.Count > 0)
        {
            var cues = task.Cues.Select((_, i) => ($"{i + 1}", new SheetField(SheetFieldKind.Cue, taskNumber, set, i + 1)));
            pieces.Add(new FieldRow(style, [.. cues], task.Cues.Count) { IsRound = false, IsOfCards = true, Label = InStack("CueLabel", style), LabelSign = Sign.Box });
        }
        pieces.Add(new NextRow(style, taskNumber, set) { Label = InStack("NextLabel", style) });
        pieces.Add(new BecauseLine(style, taskNumber, set) { Label = style.Words["Because"], LabelSign = Sign.Speech });
        return pieces;
    }

    // In columns the head says it.
    private static string InStack(string key, SheetStyle style) => style.IsStacked ? style.Words[key] : "";
}
