using Slantwise.Records.Lessons;

namespace Slantwise.Records.Halls;

/// <summary>A lesson's hall with all that is drawn and said of it.</summary>
/// <param name="Hall">The hall.</param>
/// <param name="Layout">What lies where.</param>
/// <param name="GroupCount">Groups made for the lesson; none where nobody made any.</param>
public sealed record LessonHall(SchoolHall Hall, HallLayout Layout, int? GroupCount)
{
    /// <summary>Loads it.</summary>
    /// <param name="store">Where from.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="cancel">Stops the loading.</param>
    /// <returns>None where no hall was planned for the lesson.</returns>
    public static async Task<LessonHall?> LoadAsync(IStore store, Lesson lesson, CancellationToken cancel = default)
    {
        if (await store.FindLessonSpaceAsync(lesson.SchoolId, lesson.Id, cancel) is not { } space) return null;
        if ((await store.ListHallsAsync(lesson.SchoolId, cancel)).FirstOrDefault(h => h.Id == space.HallId) is not { } hall) return null;
        return new(hall, space.Layout, await GroupCountAsync(store, lesson, cancel));
    }

    /// <summary>How many groups a lesson has; none where nobody made any.</summary>
    /// <param name="store">Where from.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="cancel">Stops the loading.</param>
    public static async Task<int?> GroupCountAsync(IStore store, Lesson lesson, CancellationToken cancel = default) =>
        (await store.ListLessonGroupsAsync(lesson.SchoolId, cancel)).FirstOrDefault(g => g.LessonId == lesson.Id)?.Plan.Groups.Count is > 0 and var count ? count : null;
}
