namespace Slantwise.Records.Floor.Contracts;

/// <summary>A pupil as a device knows one.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Label">The display name, or the code where there is none.</param>
/// <param name="Offers">What they may be offered, task by task. Nothing says why a level is missing.</param>
public sealed record BundlePupil(Guid PupilId, string Label, IReadOnlyList<BundleOffer> Offers);
