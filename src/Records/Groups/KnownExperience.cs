namespace Slantwise.Records.Groups;

/// <summary>What a teacher said of one pupil for making groups.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Experience">How much they have done it; none where nobody said.</param>
/// <param name="MaySupport">Whether they may support a partner.</param>
public sealed record KnownExperience(Guid PupilId, PupilExperience? Experience, bool MaySupport);
