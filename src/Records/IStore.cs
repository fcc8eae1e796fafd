using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Groups;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;
using Slantwise.Records.Roster;
using Slantwise.Records.Safety;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Scans.Pictures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Units;

namespace Slantwise.Records;

/// <summary>Where a school's records are kept. Every call names its school; nothing reaches across schools.</summary>
/// <remarks>A save adds or replaces by id and returns when it is durable. Lists are empty where there is nothing.</remarks>
public interface IStore
{
    /// <summary>All schools of this store, by name.</summary>
    Task<IReadOnlyList<School>> ListSchoolsAsync(CancellationToken cancel = default);

    /// <summary>One school; none if it is not here.</summary>
    Task<School?> FindSchoolAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a school.</summary>
    Task SaveSchoolAsync(School school, CancellationToken cancel = default);

    /// <summary>A school's classes, by name.</summary>
    Task<IReadOnlyList<SchoolClass>> ListClassesAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>All pupils of a school, by label.</summary>
    Task<IReadOnlyList<Pupil>> ListPupilsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>The pupils who are in a class now, by label.</summary>
    Task<IReadOnlyList<Pupil>> ListClassPupilsAsync(Guid schoolId, Guid classId, CancellationToken cancel = default);

    /// <summary>Who belongs to which class, those who left included.</summary>
    Task<IReadOnlyList<Enrolment>> ListEnrolmentsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>Saves classes, pupils and memberships together, or nothing.</summary>
    Task SaveRosterAsync(Guid schoolId, RosterSave save, CancellationToken cancel = default);

    /// <summary>Removes a pupil with memberships, restrictions, every entry about them and every picture of their sheets, and takes them off the devices of lessons. It cannot be undone.</summary>
    Task ErasePupilAsync(Guid schoolId, Guid pupilId, CancellationToken cancel = default);

    /// <summary>All restrictions of a school, those that no longer hold included.</summary>
    Task<IReadOnlyList<Restriction>> ListRestrictionsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a restriction.</summary>
    Task SaveRestrictionAsync(Restriction restriction, CancellationToken cancel = default);

    /// <summary>Lifts a restriction; lifting one that is not here changes nothing.</summary>
    Task RemoveRestrictionAsync(Guid schoolId, Guid restrictionId, CancellationToken cancel = default);

    /// <summary>A school's tasks with their levels, by name.</summary>
    Task<IReadOnlyList<MovementTask>> ListTasksAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>One task; none if it is not here.</summary>
    Task<MovementTask?> FindTaskAsync(Guid schoolId, Guid taskId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a task with its levels.</summary>
    Task SaveTaskAsync(MovementTask task, CancellationToken cancel = default);

    /// <summary>The designs of a school's own tasks, by task id.</summary>
    Task<IReadOnlyList<SchoolTaskDesign>> ListTaskDesignsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>The design of one of a school's own tasks; none where the task has none.</summary>
    Task<SchoolTaskDesign?> FindTaskDesignAsync(Guid schoolId, Guid taskId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a task together with its design, or nothing.</summary>
    /// <exception cref="ArgumentException">A design of another task or another school than the task's.</exception>
    Task SaveDesignedTaskAsync(MovementTask task, SchoolTaskDesign design, CancellationToken cancel = default);

    /// <summary>How tasks are done by single pupils, by pupil and task.</summary>
    Task<IReadOnlyList<PupilAdaptation>> ListAdaptationsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>Adds or replaces how a task is done by a pupil.</summary>
    /// <exception cref="ArgumentException">A pupil or a task that is not here.</exception>
    Task SaveAdaptationAsync(PupilAdaptation adaptation, CancellationToken cancel = default);

    /// <summary>Removes how a task is done by a pupil; removing one that is not here changes nothing.</summary>
    Task RemoveAdaptationAsync(Guid schoolId, Guid pupilId, Guid taskId, CancellationToken cancel = default);

    /// <summary>Incidents and near misses, the latest day first.</summary>
    Task<IReadOnlyList<Incident>> ListIncidentsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>Adds or replaces an incident or near miss.</summary>
    /// <exception cref="ArgumentException">A lesson, a task or a pupil that is not here.</exception>
    Task SaveIncidentAsync(Incident incident, CancellationToken cancel = default);

    /// <summary>Removes an incident or near miss; removing one that is not here changes nothing.</summary>
    Task RemoveIncidentAsync(Guid schoolId, Guid incidentId, CancellationToken cancel = default);

    /// <summary>What the teacher wrote on a lesson's risk page; none where nothing was written.</summary>
    Task<LessonRisk?> FindLessonRiskAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default);

    /// <summary>Adds or replaces what is written on a lesson's risk page.</summary>
    /// <exception cref="ArgumentException">A lesson that is not here.</exception>
    Task SaveLessonRiskAsync(LessonRisk risk, CancellationToken cancel = default);

    /// <summary>A school's halls, by name.</summary>
    Task<IReadOnlyList<SchoolHall>> ListHallsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a hall.</summary>
    Task SaveHallAsync(SchoolHall hall, CancellationToken cancel = default);

    /// <summary>Where things are in a lesson; none where it was not planned.</summary>
    Task<LessonSpace?> FindLessonSpaceAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default);

    /// <summary>Adds or replaces where things are in a lesson.</summary>
    /// <exception cref="ArgumentException">A lesson or a hall that is not here.</exception>
    Task SaveLessonSpaceAsync(LessonSpace space, CancellationToken cancel = default);

    /// <summary>The groups of all lessons, by lesson id.</summary>
    Task<IReadOnlyList<LessonGroups>> ListLessonGroupsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>Adds or replaces the groups of a lesson.</summary>
    /// <exception cref="ArgumentException">A lesson or a pupil that is not here.</exception>
    Task SaveLessonGroupsAsync(LessonGroups groups, CancellationToken cancel = default);

    /// <summary>A school's units, by name.</summary>
    Task<IReadOnlyList<TeachingUnit>> ListUnitsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>One unit; none if it is not here.</summary>
    Task<TeachingUnit?> FindUnitAsync(Guid schoolId, Guid unitId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a unit.</summary>
    /// <exception cref="ArgumentException">A class that is not here.</exception>
    Task SaveUnitAsync(TeachingUnit unit, CancellationToken cancel = default);

    /// <summary>Removes a unit; its lessons in the calendar stay. Removing one that is not here changes nothing.</summary>
    Task RemoveUnitAsync(Guid schoolId, Guid unitId, CancellationToken cancel = default);

    /// <summary>A school's sheets, by name.</summary>
    Task<IReadOnlyList<Sheet>> ListSheetsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>One sheet; none if it is not here.</summary>
    Task<Sheet?> FindSheetAsync(Guid schoolId, Guid sheetId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a sheet's name and draft; frozen versions stay as they are.</summary>
    Task SaveSheetAsync(Sheet sheet, CancellationToken cancel = default);

    /// <summary>Freezes the draft as a new version, or returns the latest version if the draft is no different.</summary>
    /// <exception cref="InvalidOperationException">The school has no such sheet.</exception>
    Task<SheetVersion> FreezeSheetAsync(Guid schoolId, Guid sheetId, CancellationToken cancel = default);

    /// <summary>A frozen version; none if it is not here.</summary>
    Task<SheetVersion?> FindSheetVersionAsync(Guid schoolId, Guid sheetId, int version, CancellationToken cancel = default);

    /// <summary>Keeps layouts that are printed, all or none. One that is here already, by tag, stays as it is.</summary>
    /// <exception cref="ArgumentException">A layout of another school; a school that is not here.</exception>
    Task KeepLayoutsAsync(Guid schoolId, IReadOnlyList<PrintedLayout> layouts, CancellationToken cancel = default);

    /// <summary>A layout that was printed; none if it is not here.</summary>
    Task<PrintedLayout?> FindLayoutAsync(Guid schoolId, long tag, CancellationToken cancel = default);

    /// <summary>A school's lessons, earliest first.</summary>
    Task<IReadOnlyList<Lesson>> ListLessonsAsync(Guid schoolId, CancellationToken cancel = default);

    /// <summary>One lesson; none if it is not here.</summary>
    Task<Lesson?> FindLessonAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default);

    /// <summary>What tells whether the lessons of a class have changed: cheap, however many entries there are.</summary>
    Task<IReadOnlyList<LessonStamp>> ListLessonStampsAsync(Guid schoolId, Guid classId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a lesson.</summary>
    Task SaveLessonAsync(Lesson lesson, CancellationToken cancel = default);

    /// <summary>Appends entries in one durable commit. Entries already here, by id, are passed over.</summary>
    /// <exception cref="ArgumentException">An entry of another school; a lesson or a pupil that is not here; two entries with one id in the batch.</exception>
    Task<AppendOutcome> AppendEntriesAsync(Guid schoolId, IReadOnlyList<Entry> entries, CancellationToken cancel = default);

    /// <summary>Every entry of a lesson, superseded ones included, in the order received.</summary>
    Task<IReadOnlyList<Entry>> ListEntriesAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default);

    /// <summary>The scans of a lesson, or of the whole school, the earliest read first; their pictures not included.</summary>
    Task<IReadOnlyList<Scan>> ListScansAsync(Guid schoolId, Guid? lessonId, CancellationToken cancel = default);

    /// <summary>One scan; none if it is not here.</summary>
    Task<Scan?> FindScanAsync(Guid schoolId, Guid scanId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a scan with its pictures in one durable commit.</summary>
    /// <exception cref="ArgumentException">A lesson or a pupil that is not here; a picture of another scan or school.</exception>
    Task SaveScanAsync(ScanSave save, CancellationToken cancel = default);

    /// <summary>The pictures kept with a scan, by key.</summary>
    Task<IReadOnlyList<ScanPicture>> ListScanPicturesAsync(Guid schoolId, Guid scanId, CancellationToken cancel = default);

    /// <summary>One picture kept with a scan; none if it is not here.</summary>
    Task<byte[]?> FindScanPictureAsync(Guid schoolId, Guid scanId, string pictureKey, CancellationToken cancel = default);

    /// <summary>Which pictures of pupils' sheets are kept for a lesson, by pupil and field.</summary>
    Task<IReadOnlyList<PictureKey>> ListPicturesAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default);

    /// <summary>One kept picture; none if it is not here.</summary>
    Task<byte[]?> FindPictureAsync(Guid schoolId, PictureKey key, CancellationToken cancel = default);

    /// <summary>Removes a pupil's kept pictures of a lesson.</summary>
    Task RemovePicturesAsync(Guid schoolId, Guid lessonId, Guid pupilId, CancellationToken cancel = default);

    /// <summary>That a lesson was opened for devices; none if it never was.</summary>
    Task<FloorLesson?> FindFloorLessonAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default);

    /// <summary>The lesson of a school that a code joins, however old the code is; none if no lesson has it.</summary>
    Task<FloorLesson?> FindFloorLessonByCodeAsync(Guid schoolId, string code, CancellationToken cancel = default);

    /// <summary>Adds or replaces what is kept about a lesson open for devices.</summary>
    /// <exception cref="ArgumentException">A lesson that is not here; a code another lesson of the school has.</exception>
    Task SaveFloorLessonAsync(FloorLesson lesson, CancellationToken cancel = default);

    /// <summary>The devices that ever joined a lesson, by name.</summary>
    Task<IReadOnlyList<FloorDevice>> ListFloorDevicesAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default);

    /// <summary>One device of a lesson; none if it never joined.</summary>
    Task<FloorDevice?> FindFloorDeviceAsync(Guid schoolId, Guid lessonId, string deviceId, CancellationToken cancel = default);

    /// <summary>Adds or replaces a device of a lesson.</summary>
    /// <exception cref="ArgumentException">A lesson that was never opened for devices; a pupil, served now or before, who is not here or was erased.</exception>
    Task SaveFloorDeviceAsync(FloorDevice device, CancellationToken cancel = default);

    /// <summary>Writes a complete copy to a file while the store stays in use.</summary>
    /// <param name="file">A new file; an existing one is replaced only once the copy is complete.</param>
    /// <param name="cancel">Stops the copy and leaves an existing file as it was.</param>
    Task BackupAsync(string file, CancellationToken cancel = default);

    /// <summary>Replaces everything in this store by a backup, or changes nothing.</summary>
    /// <param name="file">A file that <see cref="BackupAsync"/> wrote.</param>
    /// <param name="cancel">Stops before anything is replaced.</param>
    /// <exception cref="InvalidDataException">The file is not a backup of this kind of store.</exception>
    Task RestoreAsync(string file, CancellationToken cancel = default);
}
