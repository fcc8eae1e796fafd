using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Chances;

/// <summary>The levels of all sheets as the response model takes them.</summary>
internal sealed record ChanceLevels(IReadOnlyList<ResponseLevel> Levels, Dictionary<Guid, int> IndexById)
{
    public static ChanceLevels Of(IReadOnlyList<SheetTask> tasks, IReadOnlyList<CandidateLevel> candidates)
    {
        var (levels, indices) = (new List<ResponseLevel>(), new Dictionary<Guid, int>());
        for (var task = 0; task < tasks.Count; task++)
        {
            var own = tasks[task].Levels;
            // The teacher's order, from easier to harder, within the task; what it means in logits is for the data to say.
            var order = OrderScores.Of([.. Enumerable.Range(1, own.Count)]);
            for (var i = 0; i < own.Count; i++)
            {
                if (!indices.TryAdd(own[i].Id, levels.Count)) continue;
                levels.Add(new ResponseLevel(task, DoseOf(own[i].Dose)) { OrderLogits = order[i] });
            }
        }
        // A form with another dose stands where its form stands in the teacher's order; the dose says the rest.
        foreach (var candidate in candidates)
            if (indices.TryGetValue(candidate.LikeId, out var like) && indices.TryAdd(candidate.Level.Id, levels.Count))
                levels.Add(levels[like] with { Dose = DoseOf(candidate.Level.Dose) });
        return new ChanceLevels(levels, indices);
    }

    // An amount that cannot be is refused where it is written; a log from elsewhere must not stop the rest.
    private static LevelDose? DoseOf(Dose dose) => dose.Amount <= 0 ? null : dose.Kind switch
    {
        DoseKind.HoldS => LevelDose.Hold((double)dose.Amount),
        DoseKind.RepetitionsCount => LevelDose.Repetitions((int)Math.Max(1, dose.Amount)),
        DoseKind.DistanceM => LevelDose.Distance((double)dose.Amount),
        DoseKind.HeightM => LevelDose.Height((double)dose.Amount),
        DoseKind.TargetSizeM => LevelDose.TargetSize((double)dose.Amount),
        _ => null,
    };
}
