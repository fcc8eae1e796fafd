namespace Slantwise.Desk.Pages.Evidence;

/// <summary>What evidence is about: one lesson, or all lessons of a class.</summary>
/// <param name="LessonId">The lesson; none for a whole unit.</param>
/// <param name="ClassId">The class taught.</param>
public sealed record EvidenceScope(Guid? LessonId, Guid ClassId)
{
    /// <summary>Where its pages begin.</summary>
    public string Address => LessonId is { } lesson ? $"/lessons/{lesson}" : $"/classes/{ClassId}";

    /// <summary>The page of the entries behind a number that has a name.</summary>
    /// <param name="part">The number.</param>
    public string EntriesOf(EvidencePart part) => $"{Address}/entries?of={part.Key}";

    /// <summary>The page of some entries.</summary>
    /// <param name="pupilId">The pupil they are about; none for several.</param>
    /// <param name="entryIds">The entries: as many as one pupil makes in a unit, since they are written into the address.</param>
    public string EntriesOf(Guid? pupilId, IEnumerable<Guid> entryIds) =>
        $"{Address}/entries?{(pupilId is { } pupil ? $"pupil={pupil}&" : "")}ids={string.Concat(entryIds.Distinct().Select(EntryToken.Of))}";

    /// <summary>The page of everything written about a pupil.</summary>
    /// <param name="pupilId">The pupil.</param>
    public string EntriesOf(Guid pupilId) => $"{Address}/entries?pupil={pupilId}";

    /// <summary>The page of one pupil over the unit.</summary>
    /// <param name="pupilId">The pupil.</param>
    public string EvidenceOf(Guid pupilId) => $"/pupils/{pupilId}/evidence?class={ClassId}";

    /// <summary>The page of one level over the unit.</summary>
    /// <param name="levelId">The level.</param>
    public string LevelOf(Guid levelId) => $"/classes/{ClassId}/levels/{levelId}";
}
