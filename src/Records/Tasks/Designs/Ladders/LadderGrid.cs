namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>A plan's spans on a design's grid, as places: the key factor first, then the supporting ones.</summary>
internal sealed class LadderGrid
{
    private readonly TaskDesign _design;
    private readonly LadderPlan _plan;
    private readonly TaskFactor _dose;
    private readonly Dictionary<string, int> _stays;

    /// <summary>Places on a grid.</summary>
    /// <exception cref="ArgumentException">A plan that the grid has no place for.</exception>
    public LadderGrid(TaskDesign design, LadderPlan plan)
    {
        if (plan.LevelCount is < LadderPlan.LevelCountLeast or > LadderPlan.LevelCountMost)
            throw new ArgumentException($"A ladder has {LadderPlan.LevelCountLeast} to {LadderPlan.LevelCountMost} levels, not {plan.LevelCount}.", nameof(plan));
        if (plan.Supporting.Count > LadderPlan.SupportingCountMost)
            throw new ArgumentException($"At most {LadderPlan.SupportingCountMost} supporting factors move, not {plan.Supporting.Count}.", nameof(plan));
        (_design, _plan) = (design, plan);
        Spans = plan.Kind == LadderKind.Classical ? [plan.Key] : [plan.Key, .. plan.Supporting];
        if (Spans.Select(s => s.FactorKey).Distinct().Count() != Spans.Count) throw new ArgumentException("A factor is named twice.", nameof(plan));
        foreach (var span in Spans)
        {
            var factor = design.Factors.FirstOrDefault(f => f.Key == span.FactorKey) ?? throw new ArgumentException($"The grid has no factor \"{span.FactorKey}\".", nameof(plan));
            if (span.First < 0 || span.Last < span.First || span.Last >= factor.Range.Count)
                throw new ArgumentException($"The factor \"{span.FactorKey}\" has places 0 to {factor.Range.Count - 1}, not {span.First} to {span.Last}.", nameof(plan));
        }
        _dose = DoseOf(design, Spans) ?? throw new ArgumentException("The grid has no dose with a value.", nameof(design));
        _stays = design.Factors.Where(f => f.Range.Count > 0).ToDictionary(f => f.Key, f => StayOf(f));
    }

    public IReadOnlyList<LadderSpan> Spans { get; }

    /// <summary>Whether a factor is a dose other than the one that levels are measured by.</summary>
    public static bool IsOtherDose(TaskDesign design, TaskFactor factor) => factor.Dose is not null && DoseOf(design, [])?.Key != factor.Key;

    /// <summary>The level at places of the spans, in their order, each from 0 at the span's easy end.</summary>
    public DesignedLevel At(IReadOnlyList<int> places, Func<IReadOnlyDictionary<string, FactorValue>, Dose, DesignedLevel> level)
    {
        var at = new Dictionary<string, int>(_stays, StringComparer.Ordinal);
        for (var i = 0; i < Spans.Count; i++) at[Spans[i].FactorKey] = Spans[i].First + places[i];
        var settings = _design.Factors.Where(f => f.Dose is null && f.Range.Count > 0).ToDictionary(f => f.Key, f => f.Range[at[f.Key]]);
        return level(settings, new Dose(_dose.Dose!.Value, _dose.Range[at[_dose.Key]].Amount ?? 0));
    }

    // A level has one dose: the one that moves, else the one that most levels have, else the grid's first.
    private static TaskFactor? DoseOf(TaskDesign design, IReadOnlyList<LadderSpan> spans) => design.Factors
        .Where(f => f.Dose is not null && f.Range.Count > 0)
        .OrderByDescending(f => spans.Any(s => s.FactorKey == f.Key))
        .ThenByDescending(f => design.Levels.Count(l => l.Dose.Kind == f.Dose))
        .FirstOrDefault();

    // Supporting factors that do not move stay at the easy end of what the teacher chose for them.
    private int StayOf(TaskFactor factor)
    {
        if (_plan.Stays.TryGetValue(factor.Key, out var named)) return Math.Clamp(named, 0, factor.Range.Count - 1);
        foreach (var span in _plan.Supporting.Where(s => s.FactorKey == factor.Key)) return Math.Clamp(span.First, 0, factor.Range.Count - 1);
        return _design.Levels.Select(l => LadderOrder.PlaceOf(factor, l)).OfType<int>().GroupBy(place => place)
            .OrderByDescending(alike => alike.Count()).ThenBy(alike => alike.Key).FirstOrDefault()?.Key ?? 0;
    }
}
