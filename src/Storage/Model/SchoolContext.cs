using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Floor;
using Slantwise.Records.Groups;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;
using Slantwise.Records.Safety;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Pictures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Units;

namespace Slantwise.Storage.Model;

/// <summary>The one model of both databases. Every key begins with the school and every foreign key contains it.</summary>
internal abstract partial class SchoolContext(DbContextOptions options) : DbContext(options)
{
    public DbSet<School> Schools => Set<School>();
    public DbSet<SchoolClass> Classes => Set<SchoolClass>();
    public DbSet<Pupil> Pupils => Set<Pupil>();
    public DbSet<Enrolment> Enrolments => Set<Enrolment>();
    public DbSet<Restriction> Restrictions => Set<Restriction>();
    public DbSet<MovementTask> Tasks => Set<MovementTask>();
    public DbSet<SchoolTaskDesign> TaskDesigns => Set<SchoolTaskDesign>();
    public DbSet<PupilAdaptation> Adaptations => Set<PupilAdaptation>();
    public DbSet<Incident> Incidents => Set<Incident>();
    public DbSet<LessonRisk> LessonRisks => Set<LessonRisk>();
    public DbSet<SchoolHall> Halls => Set<SchoolHall>();
    public DbSet<LessonSpace> LessonSpaces => Set<LessonSpace>();
    public DbSet<LessonGroups> LessonGroups => Set<LessonGroups>();
    public DbSet<TeachingUnit> Units => Set<TeachingUnit>();
    public DbSet<Sheet> Sheets => Set<Sheet>();
    public DbSet<SheetVersion> SheetVersions => Set<SheetVersion>();
    public DbSet<PrintedLayout> PrintedLayouts => Set<PrintedLayout>();
    public DbSet<Lesson> Lessons => Set<Lesson>();
    public DbSet<EntryRow> Entries => Set<EntryRow>();
    public DbSet<ScanRow> Scans => Set<ScanRow>();
    public DbSet<ScanPicture> ScanPictures => Set<ScanPicture>();
    public DbSet<KeptPicture> Pictures => Set<KeptPicture>();
    public DbSet<FloorLesson> FloorLessons => Set<FloorLesson>();
    public DbSet<FloorDevice> FloorDevices => Set<FloorDevice>();

    /// <summary>Why the database refused a row; none for any other failure.</summary>
    public abstract Refusal? RefusalOf(DbException error);

    /// <summary>Makes other writers of these rows wait until the transaction ends.</summary>
    public abstract Task HoldAsync<TRow>(Guid schoolId, IReadOnlyCollection<Guid> ids, CancellationToken cancel) where TRow : class;

    /// <summary>Inserts the entries whose id is not here yet, within the current transaction.</summary>
    /// <returns>The ids that were new.</returns>
    public abstract Task<IReadOnlySet<Guid>> AddNewAsync(IReadOnlyList<EntryRow> rows, CancellationToken cancel);

    protected override void ConfigureConventions(ModelConfigurationBuilder conventions)
    {
        conventions.Properties<DateTimeOffset>().HaveConversion<UtcTicksColumn>();
        KeepAsText<IReadOnlyList<string>>(conventions);
        KeepAsText<IReadOnlyList<Guid>>(conventions);
        KeepAsText<IReadOnlyList<Level>>(conventions);
        KeepAsText<IReadOnlyList<LessonPhase>>(conventions);
        KeepAsText<IReadOnlyList<SafetyCondition>>(conventions);
        KeepAsText<IReadOnlyList<ReturnStep>>(conventions);
        KeepAsText<IReadOnlyList<HallThing>>(conventions);
        KeepAsText<SheetContent>(conventions);
        KeepAsText<PlanningChoice>(conventions);
        KeepAsText<TaskDesign>(conventions);
        KeepAsText<RiskNotes>(conventions);
        KeepAsText<HallLayout>(conventions);
        KeepAsText<GroupPlan>(conventions);
        KeepAsText<UnitContent>(conventions);
    }

    private static void KeepAsText<T>(ModelConfigurationBuilder conventions) => conventions.Properties<T>().HaveConversion<JsonColumn<T>, JsonColumnComparer<T>>();
}
