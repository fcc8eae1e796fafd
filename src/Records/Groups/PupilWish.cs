namespace Slantwise.Records.Groups;

/// <summary>A wish about two pupils.</summary>
/// <param name="IsTogether">Whether they are to be in one group; else in two.</param>
/// <param name="FirstPupilId">One pupil.</param>
/// <param name="SecondPupilId">The other.</param>
public sealed record PupilWish(bool IsTogether, Guid FirstPupilId, Guid SecondPupilId);
