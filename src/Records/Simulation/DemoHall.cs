using Slantwise.Records.Halls;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Simulation;

/// <summary>The invented school's hall, and how its next lesson lies in it.</summary>
internal static class DemoHall
{
    /// <summary>The hall; always the same but for its school.</summary>
    public static SchoolHall Of(Guid schoolId) => new()
    {
        SchoolId = schoolId,
        Id = new Guid("019b8c2a-6c00-7a11-8c55-4f0e5a9d7731"),
        Name = "Sports hall",
        WidthM = 22,
        DepthM = 13,
        Things = [new("Stage", 0, 11, 8, 2, true), new("Pillar", 14.6, 5.8, 0.7, 0.7, true), new("Benches", 17.5, 0, 4, 0.5, false), new("Wall bars", 21.7, 3, 0.3, 6, false)],
    };

    /// <summary>Saves the hall and the layout of a lesson in it.</summary>
    public static async Task SaveAsync(IStore store, Guid schoolId, Guid lessonId, int matCount, SheetContent sheet, CancellationToken cancel)
    {
        var hall = Of(schoolId);
        await store.SaveHallAsync(hall, cancel);
        var start = SpaceProposal.Start(null) with { AgeYears = 11 };
        var falls = await TaskFall.ListAsync(store, schoolId, sheet, FallStature.OfM(start.AgeYears), cancel);
        await store.SaveLessonSpaceAsync(
            new() { SchoolId = schoolId, LessonId = lessonId, HallId = hall.Id, Layout = SpaceProposal.LaidOut(hall, start, matCount, falls) }, cancel);
    }
}
