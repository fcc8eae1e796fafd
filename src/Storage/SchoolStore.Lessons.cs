using Slantwise.Records.Lessons;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    public Task<IReadOnlyList<MovementTask>> ListTasksAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Tasks.Where(t => t.SchoolId == schoolId), tasks => tasks.OrderBy(t => t.Name, Names).ThenBy(t => t.Id), cancel);

    /// <inheritdoc/>
    public Task<MovementTask?> FindTaskAsync(Guid schoolId, Guid taskId, CancellationToken cancel = default) =>
        FindAsync(c => c.Tasks.Where(t => t.SchoolId == schoolId && t.Id == taskId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A school that is not here.</exception>
    public Task SaveTaskAsync(MovementTask task, CancellationToken cancel = default) => SaveAsync(task, cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<SchoolTaskDesign>> ListTaskDesignsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.TaskDesigns.Where(d => d.SchoolId == schoolId), all => all.OrderBy(d => d.TaskId), cancel);

    /// <inheritdoc/>
    public Task<SchoolTaskDesign?> FindTaskDesignAsync(Guid schoolId, Guid taskId, CancellationToken cancel = default) =>
        FindAsync(c => c.TaskDesigns.Where(d => d.SchoolId == schoolId && d.TaskId == taskId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A school that is not here; a design of another task or another school than the task's.</exception>
    public Task SaveDesignedTaskAsync(MovementTask task, SchoolTaskDesign design, CancellationToken cancel = default)
    {
        if (design.SchoolId != task.SchoolId || design.TaskId != task.Id || design.Design.Id != task.Id)
            throw new ArgumentException("The design is of another task or another school than the task it is saved with. Nothing was saved.", nameof(design));
        return WriteAsync(async context =>
        {
            await SaveAllAsync(context, [task], cancel);
            await SaveAllAsync(context, [design], cancel);
            return true;
        }, cancel);
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<Lesson>> ListLessonsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(
            c => c.Lessons.Where(l => l.SchoolId == schoolId),
            lessons => lessons.OrderBy(l => l.Date).ThenBy(l => l.Title, Names).ThenBy(l => l.Id), cancel);

    /// <inheritdoc/>
    public Task<Lesson?> FindLessonAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        FindAsync(c => c.Lessons.Where(l => l.SchoolId == schoolId && l.Id == lessonId), cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<LessonStamp>> ListLessonStampsAsync(Guid schoolId, Guid classId, CancellationToken cancel = default) =>
        ListAsync(
            c => c.Lessons.Where(l => l.SchoolId == schoolId && l.ClassId == classId).Select(l => new LessonStamp(
                l.Id,
                c.Entries.Count(e => e.SchoolId == schoolId && e.LessonId == l.Id),
                // The index leads to the last one; the others are counted in it and not read.
                c.Entries.Where(e => e.SchoolId == schoolId && e.LessonId == l.Id).OrderByDescending(e => e.ReceivedOrder).Select(e => (DateTimeOffset?)e.ReceivedAt).FirstOrDefault(),
                c.SheetVersions.Where(v => v.SchoolId == schoolId && v.SheetId == l.SheetId && v.Version == l.SheetVersion).Select(v => (DateTimeOffset?)v.FrozenAt).FirstOrDefault())),
            stamps => stamps.OrderBy(s => s.LessonId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A class, sheet or sheet version the school does not have.</exception>
    public Task SaveLessonAsync(Lesson lesson, CancellationToken cancel = default) => SaveAsync(lesson, cancel);
}
