using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    public Task<IReadOnlyList<PupilAdaptation>> ListAdaptationsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Adaptations.Where(a => a.SchoolId == schoolId), all => all.OrderBy(a => a.PupilId).ThenBy(a => a.TaskId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A pupil or a task that is not here.</exception>
    public Task SaveAdaptationAsync(PupilAdaptation adaptation, CancellationToken cancel = default) => SaveAsync(adaptation, cancel);

    /// <inheritdoc/>
    public Task RemoveAdaptationAsync(Guid schoolId, Guid pupilId, Guid taskId, CancellationToken cancel = default) => WriteAsync(
        context => context.Adaptations.Where(a => a.SchoolId == schoolId && a.PupilId == pupilId && a.TaskId == taskId).ExecuteDeleteAsync(cancel), cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<Incident>> ListIncidentsAsync(Guid schoolId, CancellationToken cancel = default) => ListAsync(
        c => c.Incidents.Where(i => i.SchoolId == schoolId), all => all.OrderByDescending(i => i.Day).ThenByDescending(i => i.MinuteOfDay).ThenBy(i => i.Id), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A lesson, a task or a pupil that is not here.</exception>
    public Task SaveIncidentAsync(Incident incident, CancellationToken cancel = default) => WriteAsync(async context =>
    {
        await HoldKnownPupilsAsync(context, incident.SchoolId, incident.PupilIds, "It names", nameof(incident), cancel);
        await SaveAllAsync(context, [incident], cancel);
        return true;
    }, cancel);

    /// <inheritdoc/>
    public Task RemoveIncidentAsync(Guid schoolId, Guid incidentId, CancellationToken cancel = default) => WriteAsync(
        context => context.Incidents.Where(i => i.SchoolId == schoolId && i.Id == incidentId).ExecuteDeleteAsync(cancel), cancel);

    /// <inheritdoc/>
    public Task<LessonRisk?> FindLessonRiskAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        FindAsync(c => c.LessonRisks.Where(r => r.SchoolId == schoolId && r.LessonId == lessonId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A lesson that is not here.</exception>
    public Task SaveLessonRiskAsync(LessonRisk risk, CancellationToken cancel = default) => SaveAsync(risk, cancel);

    private static async Task TakeOffIncidentsAsync(SchoolContext context, Guid schoolId, Guid pupilId, CancellationToken cancel)
    {
        var all = await context.Incidents.Where(i => i.SchoolId == schoolId).ToListAsync(cancel);
        await SaveAllAsync(context, [.. all.Where(i => i.PupilIds.Contains(pupilId)).Select(i => i with { PupilIds = Without(i.PupilIds, pupilId) })], cancel);
    }

    // Lists are no foreign keys: what one would refuse is refused here. The pupils are held, so that one who is being erased cannot come back by a save at the same moment.
    private static async Task HoldKnownPupilsAsync(SchoolContext context, Guid schoolId, IEnumerable<Guid> named, string who, string parameter, CancellationToken cancel)
    {
        var pupilIds = named.Distinct().ToArray();
        if (pupilIds.Length == 0) return;
        await context.HoldAsync<Pupil>(schoolId, pupilIds, cancel);
        var known = await context.Pupils.Where(p => p.SchoolId == schoolId && pupilIds.Contains(p.Id)).Select(p => p.Id).ToListAsync(cancel);
        if (pupilIds.Except(known).ToList() is [var missing, ..])
            throw new ArgumentException($"{who} the pupil {missing}, whom this school does not have. Nothing was saved.", parameter);
    }
}
