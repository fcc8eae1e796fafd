using System.Security.Cryptography;
using System.Text;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>Levels that follow from a factor grid: a suggestion to the teacher, who takes all of them, some or none.</summary>
/// <param name="Levels">From easier to harder as the grid has it. At least one; fewer than asked for where the spans have no more.</param>
/// <param name="Plan">What was asked for.</param>
public sealed record LadderProposal(IReadOnlyList<ProposedLevel> Levels, LadderPlan Plan)
{
    /// <summary>Whether the spans have fewer different levels than were asked for.</summary>
    public bool IsShort => Levels.Count < Plan.LevelCount;

    /// <summary>Proposes levels.</summary>
    /// <param name="design">The task: its grid, and the levels it has, whose postures and demands are taken over where the movement is the same.</param>
    /// <param name="plan">What the teacher asks for.</param>
    /// <returns>Levels within the spans, no two at the same place. Asking twice gives the same, ids included.</returns>
    /// <exception cref="ArgumentException">A plan that the grid has no place for; a grid without a dose.</exception>
    public static LadderProposal Of(TaskDesign design, LadderPlan plan)
    {
        var grid = new LadderGrid(design, plan);
        int[] steps = [.. grid.Spans.Select(s => s.StepCount)];
        var path = plan.Kind switch
        {
            LadderKind.Classical => LadderPath.Classical(steps, plan.LevelCount),
            LadderKind.Cumulative => LadderPath.Cumulative(steps, plan.LevelCount),
            _ => LadderPath.SemiClassical(steps, plan.LevelCount),
        };
        var proposed = new List<ProposedLevel>();
        foreach (var point in path)
        {
            var (level, basis, isKept) = LevelAt(design, grid, point);
            proposed.Add(new ProposedLevel(level, proposed.Count == 0 ? [] : LadderOrder.StepsOf(design, proposed[^1].Level, level), basis, isKept));
        }
        return new LadderProposal(proposed, plan);
    }

    private static (DesignedLevel Level, DemandBasis Basis, bool IsKept) LevelAt(TaskDesign design, LadderGrid grid, int[] point)
    {
        var level = grid.At(point, (settings, dose) => new DesignedLevel { Id = IdOf(design, settings, dose), Dose = dose, Settings = settings });
        if (design.Levels.FirstOrDefault(l => design.Moved(l, level).Count == 0) is { } kept) return (kept, DemandBasis.SameMovement, true);
        var like = design.Levels.FirstOrDefault(l => design.IsOnGrid(l) && design.Moved(l, level).All(f => f.Kind == FactorKind.External));
        return like is null ? (level, DemandBasis.Unknown, false) : (level with { Demands = like.Demands, Posture = like.Posture }, DemandBasis.SameMovement, false);
    }

    // Made from what the level is, so that looking twice is looking at the same one; whoever keeps it gives it an id of its own.
    private static Guid IdOf(TaskDesign design, IReadOnlyDictionary<string, FactorValue> settings, Dose dose)
    {
        Span<byte> made = stackalloc byte[SHA256.HashSizeInBytes];
        var at = string.Join(' ', settings.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key}={s.Value}"));
        SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"{design.Id} {TaskFileWords.Of(dose.Kind)}={dose.Amount} {at}")), made);
        return new Guid(made[..16]);
    }
}
