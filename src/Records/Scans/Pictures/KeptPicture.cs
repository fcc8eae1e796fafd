namespace Slantwise.Records.Scans.Pictures;

/// <summary>A piece of a pupil's sheet that is kept beside the record: words by hand, and the boxes a person looked at.</summary>
/// <param name="SchoolId">The owning school.</param>
/// <param name="LessonId">The lesson.</param>
/// <param name="PupilId">The pupil.</param>
/// <param name="FieldKey">The item's key or the written field's, by <see cref="SheetField.Key"/>.</param>
/// <param name="Bytes">A PNG in grey.</param>
public sealed record KeptPicture(Guid SchoolId, Guid LessonId, Guid PupilId, string FieldKey, byte[] Bytes);
