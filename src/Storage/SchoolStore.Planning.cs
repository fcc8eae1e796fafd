using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Groups;
using Slantwise.Records.Halls;
using Slantwise.Records.Units;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    public Task<IReadOnlyList<SchoolHall>> ListHallsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Halls.Where(h => h.SchoolId == schoolId), halls => halls.OrderBy(h => h.Name, Names).ThenBy(h => h.Id), cancel);

    /// <inheritdoc/>
    public Task SaveHallAsync(SchoolHall hall, CancellationToken cancel = default) => SaveAsync(hall, cancel);

    /// <inheritdoc/>
    public Task<LessonSpace?> FindLessonSpaceAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        FindAsync(c => c.LessonSpaces.Where(s => s.SchoolId == schoolId && s.LessonId == lessonId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A lesson or a hall that is not here.</exception>
    public Task SaveLessonSpaceAsync(LessonSpace space, CancellationToken cancel = default) => SaveAsync(space, cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<LessonGroups>> ListLessonGroupsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.LessonGroups.Where(g => g.SchoolId == schoolId), all => all.OrderBy(g => g.LessonId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A lesson or a pupil that is not here.</exception>
    public Task SaveLessonGroupsAsync(LessonGroups groups, CancellationToken cancel = default) => WriteAsync(async context =>
    {
        await HoldKnownPupilsAsync(context, groups.SchoolId, PupilsOf(groups.Plan), "The groups name", nameof(groups), cancel);
        await SaveAllAsync(context, [groups], cancel);
        return true;
    }, cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<TeachingUnit>> ListUnitsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Units.Where(u => u.SchoolId == schoolId), units => units.OrderBy(u => u.Name, Names).ThenBy(u => u.Id), cancel);

    /// <inheritdoc/>
    public Task<TeachingUnit?> FindUnitAsync(Guid schoolId, Guid unitId, CancellationToken cancel = default) =>
        FindAsync(c => c.Units.Where(u => u.SchoolId == schoolId && u.Id == unitId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A class that is not here.</exception>
    public Task SaveUnitAsync(TeachingUnit unit, CancellationToken cancel = default) => SaveAsync(unit, cancel);

    /// <inheritdoc/>
    public Task RemoveUnitAsync(Guid schoolId, Guid unitId, CancellationToken cancel = default) => WriteAsync(
        context => context.Units.Where(u => u.SchoolId == schoolId && u.Id == unitId).ExecuteDeleteAsync(cancel), cancel);

    private static IEnumerable<Guid> PupilsOf(GroupPlan plan) =>
        plan.Groups.SelectMany(g => g.PupilIds.Concat(g.LockedPupilIds)).Concat(plan.Wishes.SelectMany(w => new[] { w.FirstPupilId, w.SecondPupilId })).Concat(plan.Known.Select(k => k.PupilId));

    private static async Task TakeOutOfGroupsAsync(SchoolContext context, Guid schoolId, Guid pupilId, CancellationToken cancel)
    {
        var all = await context.LessonGroups.Where(g => g.SchoolId == schoolId).ToListAsync(cancel);
        var changed = all.Where(g => PupilsOf(g.Plan).Contains(pupilId)).Select(g => g with
        {
            Plan = g.Plan with
            {
                Groups = [.. g.Plan.Groups.Select(one => one with { PupilIds = Without(one.PupilIds, pupilId), LockedPupilIds = Without(one.LockedPupilIds, pupilId) })],
                Wishes = [.. g.Plan.Wishes.Where(w => w.FirstPupilId != pupilId && w.SecondPupilId != pupilId)],
                Known = [.. g.Plan.Known.Where(k => k.PupilId != pupilId)],
            },
        }).ToList();
        await SaveAllAsync(context, changed, cancel);
    }
}
