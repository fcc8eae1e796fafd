using System.Globalization;
using Slantwise.Records.Scans;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>What one set asks: before it, during it, after it.</summary>
internal sealed record SetPieces(IReadOnlyList<SetPiece> Before, IReadOnlyList<SetPiece> During, IReadOnlyList<SetPiece> After)
{
    public static SetPieces Of(SheetContent content, SheetTask task, int taskNumber, int set, IReadOnlyList<OfferedLevel> offered, SheetStyle style)
    {
        var isHeld = IsHeld(task);
        var before = new List<SetPiece>();
        // None to mark: the way agreed with the teacher is written once, above.
        if (offered.Count > 0)
        {
            before.Add(new FieldRow(
                style, "", [.. offered.Select((l, i) => ($"{i + 1}", new SheetField(SheetFieldKind.Level, taskNumber, set, l.Number)))], task.Levels.Count)
            { IsOfCards = true });
        }
        var predicted = Predictions.Of(content, task);
        if (predicted.Count > 0)
        {
            before.Add(new FieldRow(
                style,
                style.Words["Guess"],
                [.. predicted.Select(n => (n.ToString(CultureInfo.InvariantCulture), new SheetField(SheetFieldKind.Predicted, taskNumber, set, n)))],
                predicted.Count));
        }
        var after = new List<SetPiece>();
        if (task.Cues.Count > 0)
        {
            after.Add(new FieldRow(
                style, "", [.. task.Cues.Select((_, i) => ($"{i + 1}", new SheetField(SheetFieldKind.Cue, taskNumber, set, i + 1)))], task.Cues.Count)
            { IsRound = false, IsOfCards = true });
        }
        after.Add(new NextRow(style, "", taskNumber, set));
        after.Add(new BecauseLine(style, taskNumber, set));
        return new SetPieces(
            before, [new TrialGrid(style, taskNumber, set, content.TrialCount, isHeld, isHeld && content.Predicts == PredictionKind.HoldS)], after);
    }

    /// <summary>Whether a task is about staying: its trials are held, not managed.</summary>
    public static bool IsHeld(SheetTask task) => task.Levels.Any(l => l.Dose.Kind == DoseKind.HoldS);
}
