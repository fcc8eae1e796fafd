namespace Slantwise.Records.Groups;

/// <summary>A group of a lesson; its number is its place in the list.</summary>
/// <param name="PupilIds">Who is in it.</param>
/// <param name="LockedPupilIds">Of them, who stays when groups are made anew.</param>
/// <param name="MatNumbers">The mats it uses, from 1; may be empty.</param>
public sealed record LessonGroup(IReadOnlyList<Guid> PupilIds, IReadOnlyList<Guid> LockedPupilIds, IReadOnlyList<int> MatNumbers);
