namespace Slantwise.Records.Floor.Contracts;

/// <summary>A name on the list a pupil picks from.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Label">The display name, or the code where there is none.</param>
/// <param name="IsServed">Whether another device serves them now; they may be picked all the same.</param>
public sealed record PupilToPick(Guid PupilId, string Label, bool IsServed);
