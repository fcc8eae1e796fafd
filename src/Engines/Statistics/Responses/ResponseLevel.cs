namespace Slantwise.Engines.Statistics.Responses;

/// <summary>One level as the model sees it. A level that nobody has tried may be listed: its difficulty then comes from what it shares with others.</summary>
/// <param name="Task">Which task it belongs to, any number; levels of one task share a part of their residual.</param>
/// <param name="Dose">Its dose; none where success has no measure.</param>
public sealed record ResponseLevel(int Task, LevelDose? Dose = null)
{
    /// <summary>How much harder than the middle the teacher's order (or mechanics) holds it for, in logits, before anybody has tried; none where nobody said.</summary>
    /// <remarks>Not counting the dose, which has a slope of its own. <see cref="OrderScores"/> turns an order into such numbers.</remarks>
    public double? OrderLogits { get; init; }

    /// <summary>More covariates of levels: each level of a fit lists the same number of them, in the same order.</summary>
    public IReadOnlyList<double> Covariates { get; init; } = [];
}
