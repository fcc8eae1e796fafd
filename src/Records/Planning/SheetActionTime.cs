using Slantwise.Engines.Planning.Practice;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Planning;

/// <summary>How long one try on a sheet takes, from its levels' doses.</summary>
public static class SheetActionTime
{
    /// <summary>The mean over tasks of the mean over each task's levels, as if every hold lasted to its target.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>0.5 seconds to 10 minutes; none where the sheet has no level.</returns>
    /// <remarks>A working rule: which levels pupils will choose is theirs and not known, so that each level counts alike.</remarks>
    public static double? MeanS(SheetContent sheet)
    {
        var tasks = sheet.Tasks.Where(t => t.Levels.Count > 0).Select(t => t.Levels.Average(l => OfS(l.Dose))).ToList();
        return tasks.Count == 0 ? null : tasks.Average();
    }

    /// <summary>One try at a dose.</summary>
    /// <param name="dose">The dose.</param>
    /// <returns>0.5 seconds to 10 minutes.</returns>
    public static double OfS(Dose dose)
    {
        var amount = (double)dose.Amount;
        var timeS = dose.Kind switch
        {
            DoseKind.HoldS => ActionTime.HoldS(Math.Clamp(amount, 0.5, 600), 1),
            DoseKind.RepetitionsCount => ActionTime.RepetitionsS((int)Math.Clamp(Math.Round(amount), 1, 400), PlanningDefaults.RepetitionS),
            _ => PlanningDefaults.ThrowS,
        };
        return Math.Clamp(timeS, 0.5, 600);
    }
}
