using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>What can be predicted by a mark.</summary>
internal static class Predictions
{
    private const int StepCount = 10;

    // Steps a child counts in.
    private static readonly int[] StepsS = [1, 2, 3, 5, 10, 15, 20, 30, 60];

    /// <summary>Every number of successes; or seconds in equal steps from 0, at least to twice the longest hold the sheet asks for. None where nothing is predicted.</summary>
    public static IReadOnlyList<int> Of(SheetContent content, SheetTask task) => content.Predicts switch
    {
        PredictionKind.SuccessCount => [.. Enumerable.Range(0, content.TrialCount + 1)],
        PredictionKind.HoldS => [.. Enumerable.Range(0, StepCount + 1).Select(i => i * StepS(task))],
        _ => [],
    };

    private static int StepS(SheetTask task)
    {
        var longestS = task.Levels.Where(l => l.Dose.Kind == DoseKind.HoldS).Select(l => l.Dose.Amount).DefaultIfEmpty(0).Max();
        return StepsS.FirstOrDefault(s => s * StepCount >= 2 * longestS, StepsS[^1]);
    }
}
