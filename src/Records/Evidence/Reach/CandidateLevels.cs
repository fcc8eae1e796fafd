using System.Security.Cryptography;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>Levels that a task could also have: those of the task that are not on the sheet, and its forms with other doses.</summary>
public static class CandidateLevels
{
    // Those who are left out mostly need less, and some much less.
    private const int BelowCount = 5;
    private const int AboveCount = 2;

    // Doses a teacher would write, from less to more; own choice.
    private static readonly Dictionary<DoseKind, decimal[]> Doses = new()
    {
        [DoseKind.HoldS] = [1, 2, 3, 5, 8, 10, 15, 20, 30],
        [DoseKind.RepetitionsCount] = [1, 2, 3, 5, 8, 10, 15, 20],
        [DoseKind.DistanceM] = [1, 1.5m, 2, 2.5m, 3, 4, 5, 6, 8],
        [DoseKind.HeightM] = [.2m, .3m, .4m, .5m, .6m, .7m, .8m, .9m, 1],
        [DoseKind.TargetSizeM] = [1, .8m, .6m, .5m, .4m, .3m, .2m],
    };

    /// <summary>The candidates for a task on a sheet.</summary>
    /// <param name="taskId">The task.</param>
    /// <param name="onSheet">The levels of the sheet.</param>
    /// <param name="ofTask">All levels of the task as it is kept.</param>
    /// <returns>
    /// First the task's own levels that are not on the sheet, in their order; then each form (name, posture) with up to five
    /// doses below the largest it has and two above. None that is on the sheet already. A form asks for all that any of its levels asks for. Ids are made from what the level is, so asking twice gives the same.
    /// </returns>
    public static IReadOnlyList<CandidateLevel> Of(Guid taskId, IReadOnlyList<Level> onSheet, IReadOnlyList<Level> ofTask)
    {
        var own = ofTask.Where(l => onSheet.All(s => s.Id != l.Id && !IsAlike(s, l))).ToList();
        var all = onSheet.Concat(own).ToList();
        var forms = all.GroupBy(l => (l.Name, l.Posture, l.Dose.Kind)).ToList();
        var other = forms.SelectMany(form => Nearest(form.Key.Kind, [.. form.Select(l => l.Dose.Amount)])
            .Select(amount => new CandidateLevel(taskId, With(form.First(), amount) with { Demands = DemandsOf([.. form]) }, form.First().Id)));
        return [.. own.Select(l => new CandidateLevel(taskId, l, l.Id)), .. other];
    }

    private static IEnumerable<decimal> Nearest(DoseKind kind, IReadOnlyList<decimal> has)
    {
        var doses = Doses.GetValueOrDefault(kind, []);
        return doses.Where(d => !has.Contains(d) && d < has.Max()).OrderByDescending(d => d).Take(BelowCount)
            .Concat(doses.Where(d => !has.Contains(d) && d > has.Max()).Order().Take(AboveCount));
    }

    private static IReadOnlyList<BodyDemand> DemandsOf(IReadOnlyList<Level> form)
    {
        var all = form.SelectMany(l => l.Demands).Distinct().Order().ToList();
        return all.Count == form[0].Demands.Distinct().Count() ? form[0].Demands : all;
    }

    private static Level With(Level form, decimal amount)
    {
        Span<byte> made = stackalloc byte[32];
        var key = FormattableString.Invariant($"{form.Id} {form.Dose.Kind} {amount}");
        SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(key), made);
        return form with { Id = new Guid(made[..16]), Dose = form.Dose with { Amount = amount } };
    }

    /// <summary>Whether two levels would be done alike.</summary>
    internal static bool IsAlike(Level one, Level other) => one.Name == other.Name && one.Dose == other.Dose && one.Posture == other.Posture;
}
