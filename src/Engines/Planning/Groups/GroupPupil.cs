namespace Slantwise.Engines.Planning.Groups;

/// <summary>A pupil to be grouped; who it is, is the place in the list.</summary>
/// <param name="ExperienceFraction">How experienced, 0 to 1, by whatever measure the caller has; none where nothing is known, and then the pupil counts for no goal.</param>
/// <param name="MaySupport">Whether the pupil may support a partner.</param>
public readonly record struct GroupPupil(double? ExperienceFraction = null, bool MaySupport = false);
