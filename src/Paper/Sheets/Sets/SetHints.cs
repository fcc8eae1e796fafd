using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>The three words that say what a pupil does, each with what is asked.</summary>
internal static class SetHints
{
    public static IReadOnlyList<(string Word, IReadOnlyList<string> Hints)> Of(SheetContent content, SetPieces pieces, SheetStyle style)
    {
        var words = style.Words;
        var choose = new List<string>();
        if (pieces.Before.Any(p => p is FieldRow { IsOfCards: true, IsEmpty: false })) choose.Add(words["ChooseHint"]);
        if (content.Predicts == PredictionKind.SuccessCount) choose.Add(words["GuessHint"]);
        if (content.Predicts == PredictionKind.HoldS) choose.Add(words["GuessHintS"]);
        return [(words["Choose"], choose), (words["Try"], [words["TryHint"]]), (words["Decide"], [words["DecideHint"]])];
    }
}
