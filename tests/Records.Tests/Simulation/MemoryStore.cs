using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Simulation;

/// <summary>As much of a store as saving the demo school needs, with a fault to order. The real stores have tests of their own.</summary>
internal sealed class MemoryStore : IStore
{
    public Dictionary<Guid, School> Schools { get; } = [];
    public List<RosterSave> Rosters { get; } = [];
    public Dictionary<Guid, Restriction> Restrictions { get; } = [];
    public Dictionary<Guid, MovementTask> Tasks { get; } = [];
    public Dictionary<Guid, Sheet> Sheets { get; } = [];
    public List<SheetVersion> Versions { get; } = [];
    public Dictionary<Guid, Lesson> Lessons { get; } = [];
    public Dictionary<Guid, Entry> Entries { get; } = [];

    /// <summary>How many batches of entries are taken before one fails; none for no fault.</summary>
    public int? BatchesBeforeFault { get; set; }

    public Task SaveSchoolAsync(School school, CancellationToken cancel = default) => Done(() => Schools[school.Id] = school);

    public Task SaveRosterAsync(Guid schoolId, RosterSave save, CancellationToken cancel = default) => Done(() => Rosters.Add(save));

    public Task SaveRestrictionAsync(Restriction restriction, CancellationToken cancel = default) => Done(() => Restrictions[restriction.Id] = restriction);

    public Task SaveTaskAsync(MovementTask task, CancellationToken cancel = default) => Done(() => Tasks[task.Id] = task);

    public Task SaveSheetAsync(Sheet sheet, CancellationToken cancel = default) => Done(() => Sheets[sheet.Id] = sheet);

    public Task<SheetVersion> FreezeSheetAsync(Guid schoolId, Guid sheetId, CancellationToken cancel = default)
    {
        var frozen = new SheetVersion
        {
            SchoolId = schoolId,
            SheetId = sheetId,
            Version = Versions.Count(v => v.SheetId == sheetId) + 1,
            Content = Sheets[sheetId].Draft,
            FrozenAt = DateTimeOffset.UnixEpoch,
        };
        Versions.Add(frozen);
        return Task.FromResult(frozen);
    }

    public Task<SheetVersion?> FindSheetVersionAsync(Guid schoolId, Guid sheetId, int version, CancellationToken cancel = default) =>
        Task.FromResult(Versions.FirstOrDefault(v => v.SheetId == sheetId && v.Version == version));

    public Task<Lesson?> FindLessonAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => Task.FromResult(Lessons.GetValueOrDefault(lessonId));

    public Task SaveLessonAsync(Lesson lesson, CancellationToken cancel = default) => Done(() => Lessons[lesson.Id] = lesson);

    public Task<AppendOutcome> AppendEntriesAsync(Guid schoolId, IReadOnlyList<Entry> entries, CancellationToken cancel = default)
    {
        if (BatchesBeforeFault-- == 0) throw new IOException("The disk is full.");
        Assert.All(entries, e => Assert.True(Lessons.ContainsKey(e.LessonId)));
        var added = entries.Where(e => Entries.TryAdd(e.Id, e)).Select(e => e.Id).ToList();
        return Task.FromResult(new AppendOutcome(added, entries.Count - added.Count));
    }

    public Task<IReadOnlyList<School>> ListSchoolsAsync(CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<School?> FindSchoolAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<SchoolClass>> ListClassesAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<Pupil>> ListPupilsAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<Pupil>> ListClassPupilsAsync(Guid schoolId, Guid classId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<Enrolment>> ListEnrolmentsAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task ErasePupilAsync(Guid schoolId, Guid pupilId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<Restriction>> ListRestrictionsAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task RemoveRestrictionAsync(Guid schoolId, Guid restrictionId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<MovementTask>> ListTasksAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<MovementTask?> FindTaskAsync(Guid schoolId, Guid taskId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<Sheet>> ListSheetsAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<Sheet?> FindSheetAsync(Guid schoolId, Guid sheetId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<Lesson>> ListLessonsAsync(Guid schoolId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task<IReadOnlyList<Entry>> ListEntriesAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task BackupAsync(string file, CancellationToken cancel = default) => throw new NotSupportedException();
    public Task RestoreAsync(string file, CancellationToken cancel = default) => throw new NotSupportedException();

    private static Task Done(Action save)
    {
        save();
        return Task.CompletedTask;
    }
}
