using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Checks;

/// <summary>What one pupil entered for one set of one task.</summary>
internal sealed record PupilSet(
    int Number, SheetTask Task, Guid? ChosenLevelId, Prediction? Predicted, Decision? Decided, IReadOnlyList<(int Number, Trial Trial)> Trials)
{
    /// <summary>The chosen level, where the sheet has it.</summary>
    public Level? Chosen => ChosenLevelId is { } id ? Task.Levels.FirstOrDefault(l => l.Id == id) : null;

    public static PupilSet Of(int number, SheetTask task, IEnumerable<Entry> entries)
    {
        Guid? chosen = null;
        Prediction? predicted = null;
        Decision? decided = null;
        List<(int, Trial)> trials = [];
        foreach (var entry in entries)
        {
            switch (entry.Fact)
            {
                case Choice choice: chosen = choice.LevelId; break;
                case Prediction prediction: predicted = prediction; break;
                case Decision decision: decided = decision; break;
                case Trial trial: trials.Add((entry.TrialNumber ?? 0, trial)); break;
            }
        }
        trials.Sort((a, b) => a.Item1.CompareTo(b.Item1));
        return new(number, task, chosen, predicted, decided, trials);
    }
}
