namespace Slantwise.Records.Evidence.Levels;

/// <summary>One pupil at one level: what was done there, and what is believed of the next lesson.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Label">What to call the pupil.</param>
/// <param name="LevelPlace">The level's place in the task's evidence, from 0.</param>
/// <param name="Level">What the class's entries say about the level.</param>
/// <param name="SetCount">The pupil's sets there.</param>
/// <param name="Success">Their tries, with n and a range.</param>
/// <param name="BestHold">The longest hold there; none where nobody timed and no hold reached its dose.</param>
/// <param name="IsOffered">Whether policy and the pupil's restrictions leave the level on the day.</param>
/// <param name="Chance">The chance in the next lesson; none where the level is not offered or the model has none.</param>
public sealed record PupilAtLevel(
    Guid PupilId, string Label, int LevelPlace, LevelEvidence Level, int SetCount, SuccessShare Success, BestHold? BestHold, bool IsOffered, LevelChance? Chance)
{
    /// <summary>Whether the pupil has a try there.</summary>
    public bool IsTried => Success.TrialCount > 0;
}
