using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    public Task<IReadOnlyList<SchoolClass>> ListClassesAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Classes.Where(k => k.SchoolId == schoolId), classes => classes.OrderBy(k => k.Name, Names).ThenBy(k => k.Id), cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<Pupil>> ListPupilsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Pupils.Where(p => p.SchoolId == schoolId), ByLabel, cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<Pupil>> ListClassPupilsAsync(Guid schoolId, Guid classId, CancellationToken cancel = default) =>
        ListAsync(
            c => from enrolment in c.Enrolments
                 where enrolment.SchoolId == schoolId && enrolment.ClassId == classId && enrolment.IsCurrent
                 join pupil in c.Pupils on new { enrolment.SchoolId, Id = enrolment.PupilId } equals new { pupil.SchoolId, pupil.Id }
                 select pupil,
            ByLabel, cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<Enrolment>> ListEnrolmentsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Enrolments.Where(e => e.SchoolId == schoolId), all => all.OrderBy(e => e.ClassId).ThenBy(e => e.PupilId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A record of another school; a class or pupil that is not here; a code, name or roster key used twice.</exception>
    public Task SaveRosterAsync(Guid schoolId, RosterSave save, CancellationToken cancel = default)
    {
        var owners = save.Classes.Select(c => c.SchoolId).Concat(save.Pupils.Select(p => p.SchoolId)).Concat(save.Enrolments.Select(e => e.SchoolId));
        if (owners.Any(owner => owner != schoolId))
            throw new ArgumentException("A class, pupil or membership belongs to another school than the one saved to. Nothing was saved.", nameof(save));
        return WriteAsync(async context =>
        {
            await FreeUniqueTextsAsync(context, schoolId, save, cancel);
            await SaveAllAsync(context, save.Classes, cancel);
            await SaveAllAsync(context, save.Pupils, cancel);
            await SaveAllAsync(context, save.Enrolments, cancel);
            return true;
        }, cancel);
    }

    /// <inheritdoc/>
    public async Task ErasePupilAsync(Guid schoolId, Guid pupilId, CancellationToken cancel = default)
    {
        await WriteAsync(async context =>
        {
            // Held first: an entry about the pupil that arrives meanwhile waits, and is then refused.
            await context.HoldAsync<Pupil>(schoolId, [pupilId], cancel);
            await context.Entries.Where(e => e.SchoolId == schoolId && e.PupilId == pupilId).ExecuteDeleteAsync(cancel);
            await EraseScansAsync(context, schoolId, pupilId, cancel);
            await TakeOffDevicesAsync(context, schoolId, pupilId, cancel);
            await TakeOutOfGroupsAsync(context, schoolId, pupilId, cancel);
            await TakeOffIncidentsAsync(context, schoolId, pupilId, cancel);
            await context.Adaptations.Where(a => a.SchoolId == schoolId && a.PupilId == pupilId).ExecuteDeleteAsync(cancel);
            await context.Restrictions.Where(r => r.SchoolId == schoolId && r.PupilId == pupilId).ExecuteDeleteAsync(cancel);
            await context.Enrolments.Where(e => e.SchoolId == schoolId && e.PupilId == pupilId).ExecuteDeleteAsync(cancel);
            return await context.Pupils.Where(p => p.SchoolId == schoolId && p.Id == pupilId).ExecuteDeleteAsync(cancel);
        }, cancel);
        await ForgetErasedAsync(cancel);
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<Restriction>> ListRestrictionsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Restrictions.Where(r => r.SchoolId == schoolId), all => all.OrderBy(r => r.Id), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A pupil the school does not have.</exception>
    public Task SaveRestrictionAsync(Restriction restriction, CancellationToken cancel = default) => SaveAsync(restriction, cancel);

    /// <inheritdoc/>
    public Task RemoveRestrictionAsync(Guid schoolId, Guid restrictionId, CancellationToken cancel = default) => WriteAsync(
        context => context.Restrictions.Where(r => r.SchoolId == schoolId && r.Id == restrictionId).ExecuteDeleteAsync(cancel), cancel);

    /// <summary>Leaves no readable copy of deleted rows beside the data, where the database allows it.</summary>
    private protected abstract Task ForgetErasedAsync(CancellationToken cancel);

    private static IEnumerable<Pupil> ByLabel(List<Pupil> pupils) =>
        pupils.OrderBy(p => p.Label, Names).ThenBy(p => p.Code, Names).ThenBy(p => p.Id);

    // Two pupils may swap codes in one save. Uniqueness is checked row by row, so whoever gets new texts first lets go
    // of the old ones; nobody outside the transaction sees this.
    private static async Task FreeUniqueTextsAsync(SchoolContext context, Guid schoolId, RosterSave save, CancellationToken cancel)
    {
        var newClasses = save.Classes.ToLookup(c => c.Id);
        foreach (var old in await context.Classes.Where(c => c.SchoolId == schoolId).ToListAsync(cancel))
        {
            if (newClasses[old.Id].All(c => c.Name == old.Name && c.RosterKey == old.RosterKey)) continue;
            var stand = "~" + old.Id;
            await context.Classes.Where(c => c.SchoolId == schoolId && c.Id == old.Id).ExecuteUpdateAsync(
                set => set.SetProperty(c => c.Name, stand).SetProperty(c => c.RosterKey, (string?)null), cancel);
        }
        var newPupils = save.Pupils.ToLookup(p => p.Id);
        foreach (var old in await context.Pupils.Where(p => p.SchoolId == schoolId).ToListAsync(cancel))
        {
            if (newPupils[old.Id].All(p => p.Code == old.Code && p.RosterKey == old.RosterKey)) continue;
            var stand = "~" + old.Id;
            await context.Pupils.Where(p => p.SchoolId == schoolId && p.Id == old.Id).ExecuteUpdateAsync(
                set => set.SetProperty(p => p.Code, stand).SetProperty(p => p.RosterKey, (string?)null), cancel);
        }
    }

    private static async Task SaveAllAsync<TRow>(SchoolContext context, IReadOnlyList<TRow> rows, CancellationToken cancel) where TRow : class
    {
        await using var writer = RowWriter<TRow>.Replacing(context);
        foreach (var row in rows) await writer.WriteAsync(row, cancel);
    }
}
