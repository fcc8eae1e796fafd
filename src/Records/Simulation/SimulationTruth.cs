namespace Slantwise.Records.Simulation;

/// <summary>What a simulation knows and its entries do not say: for studies of how well evidence finds it.</summary>
/// <param name="Pupils">In the plan's order.</param>
/// <param name="Levels">By task, then in the order the sheets first show them.</param>
/// <param name="Cues">By task, then by number.</param>
public sealed record SimulationTruth(
    IReadOnlyList<PupilTruth> Pupils, IReadOnlyList<LevelTruth> Levels, IReadOnlyList<CueTruth> Cues)
{
    private readonly Dictionary<Guid, PupilTruth> _pupils = Pupils.ToDictionary(p => p.PupilId);
    private readonly Dictionary<Guid, LevelTruth> _levels = Levels.ToDictionary(l => l.Level.Id);

    /// <summary>The true log odds that a trial succeeds.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <param name="levelId">The level.</param>
    /// <param name="lessonsBeforeCount">How many lessons of the unit came before this one, 0 or more.</param>
    /// <param name="trialsBeforeCount">How many trials the pupil had made in this lesson, 0 or more.</param>
    /// <exception cref="KeyNotFoundException">The pupil or the level is not part of this simulation.</exception>
    public double SuccessLogits(Guid pupilId, Guid levelId, int lessonsBeforeCount, int trialsBeforeCount)
    {
        var (pupil, level) = (_pupils[pupilId], _levels[levelId]);
        return pupil.AbilityLogits[level.Family]
            + (pupil.LearningLogits * lessonsBeforeCount)
            - (pupil.FatigueLogits * trialsBeforeCount)
            - level.DifficultyLogits;
    }

    /// <summary>What a pupil is like.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <exception cref="KeyNotFoundException">The pupil is not part of this simulation.</exception>
    public PupilTruth Pupil(Guid pupilId) => _pupils[pupilId];

    /// <summary>What a level is like.</summary>
    /// <param name="levelId">The level.</param>
    /// <exception cref="KeyNotFoundException">The level is not part of this simulation.</exception>
    public LevelTruth Level(Guid levelId) => _levels[levelId];
}
