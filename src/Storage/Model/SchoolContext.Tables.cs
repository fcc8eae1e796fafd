using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slantwise.Records.Floor;
using Slantwise.Records.Groups;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Pictures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Units;

namespace Slantwise.Storage.Model;

internal abstract partial class SchoolContext
{
    protected override void OnModelCreating(ModelBuilder model)
    {
        model.Entity<School>(school =>
        {
            school.ToTable("schools").HasKey(s => s.Id);
            school.ComplexProperty(s => s.Policy);
            school.ComplexProperty(s => s.Pictures);
        });
        model.Entity<SchoolClass>(schoolClass =>
        {
            schoolClass.ToTable("classes").HasKey(c => new { c.SchoolId, c.Id });
            schoolClass.HasIndex(c => new { c.SchoolId, c.Name }).IsUnique();
            schoolClass.HasIndex(c => new { c.SchoolId, c.RosterKey }).IsUnique();
            schoolClass.HasOne<School>().WithMany().HasForeignKey(c => c.SchoolId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Pupil>(pupil =>
        {
            pupil.ToTable("pupils").HasKey(p => new { p.SchoolId, p.Id });
            pupil.HasIndex(p => new { p.SchoolId, p.Code }).IsUnique();
            pupil.HasIndex(p => new { p.SchoolId, p.RosterKey }).IsUnique();
            pupil.HasOne<School>().WithMany().HasForeignKey(p => p.SchoolId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Enrolment>(enrolment =>
        {
            enrolment.ToTable("enrolments").HasKey(e => new { e.SchoolId, e.ClassId, e.PupilId });
            Belongs<Enrolment, SchoolClass>(enrolment, nameof(Enrolment.ClassId));
            Belongs<Enrolment, Pupil>(enrolment, nameof(Enrolment.PupilId));
        });
        model.Entity<Restriction>(restriction =>
        {
            restriction.ToTable("restrictions").HasKey(r => new { r.SchoolId, r.Id });
            Belongs<Restriction, Pupil>(restriction, nameof(Restriction.PupilId));
        });
        model.Entity<MovementTask>(task =>
        {
            task.ToTable("tasks").HasKey(t => new { t.SchoolId, t.Id });
            task.HasOne<School>().WithMany().HasForeignKey(t => t.SchoolId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Sheet>(sheet =>
        {
            sheet.ToTable("sheets").HasKey(s => new { s.SchoolId, s.Id });
            sheet.HasOne<School>().WithMany().HasForeignKey(s => s.SchoolId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<SheetVersion>(version =>
        {
            version.ToTable("sheet_versions").HasKey(v => new { v.SchoolId, v.SheetId, v.Version });
            Belongs<SheetVersion, Sheet>(version, nameof(SheetVersion.SheetId));
        });
        model.Entity<PrintedLayout>(layout =>
        {
            layout.ToTable("printed_layouts").HasKey(l => new { l.SchoolId, l.Tag });
            layout.HasOne<School>().WithMany().HasForeignKey(l => l.SchoolId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<Lesson>(lesson =>
        {
            lesson.ToTable("lessons").HasKey(l => new { l.SchoolId, l.Id });
            Belongs<Lesson, SchoolClass>(lesson, nameof(Lesson.ClassId));
            Belongs<Lesson, Sheet>(lesson, nameof(Lesson.SheetId));
            lesson.HasOne<SheetVersion>().WithMany()
                .HasForeignKey(l => new { l.SchoolId, l.SheetId, l.SheetVersion }).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<EntryRow>(entry =>
        {
            entry.ToTable("entries").HasKey(e => new { e.SchoolId, e.Id });
            // Neither the superseded entry nor the task is a foreign key: a correction may arrive before what it corrects
            // (two devices), and a task is the copy on the frozen sheet.
            entry.HasIndex(e => new { e.SchoolId, e.LessonId, e.ReceivedOrder }).IsUnique();
            Belongs<EntryRow, Lesson>(entry, nameof(EntryRow.LessonId));
            Belongs<EntryRow, Pupil>(entry, nameof(EntryRow.PupilId));
        });
        model.Entity<ScanRow>(scan =>
        {
            scan.ToTable("scans").HasKey(s => new { s.SchoolId, s.Id });
            scan.HasIndex(s => new { s.SchoolId, s.LessonId });
            Belongs<ScanRow, Lesson>(scan, nameof(ScanRow.LessonId));
            Belongs<ScanRow, Pupil>(scan, nameof(ScanRow.PupilId));
        });
        model.Entity<ScanPicture>(picture =>
        {
            picture.ToTable("scan_pictures").HasKey(p => new { p.SchoolId, p.ScanId, p.PictureKey });
            Belongs<ScanPicture, ScanRow>(picture, nameof(ScanPicture.ScanId));
        });
        model.Entity<KeptPicture>(picture =>
        {
            picture.ToTable("pictures").HasKey(p => new { p.SchoolId, p.LessonId, p.PupilId, p.FieldKey });
            Belongs<KeptPicture, Lesson>(picture, nameof(KeptPicture.LessonId));
            Belongs<KeptPicture, Pupil>(picture, nameof(KeptPicture.PupilId));
        });
        model.Entity<FloorLesson>(floor =>
        {
            floor.ToTable("floor_lessons").HasKey(f => new { f.SchoolId, f.LessonId });
            floor.HasIndex(f => new { f.SchoolId, f.Code }).IsUnique();
            Belongs<FloorLesson, Lesson>(floor, nameof(FloorLesson.LessonId));
        });
        model.Entity<FloorDevice>(device =>
        {
            // The pupils are lists: what a foreign key would refuse is refused where a device is saved.
            device.ToTable("floor_devices").HasKey(d => new { d.SchoolId, d.LessonId, d.DeviceId });
            Belongs<FloorDevice, FloorLesson>(device, nameof(FloorDevice.LessonId));
        });
        AddSafety(model);
        AddPlanning(model);
        ColumnNames.Apply(model.Model);
    }

    private static void AddSafety(ModelBuilder model)
    {
        model.Entity<PupilAdaptation>(adaptation =>
        {
            adaptation.ToTable("adaptations").HasKey(a => new { a.SchoolId, a.PupilId, a.TaskId });
            Belongs<PupilAdaptation, Pupil>(adaptation, nameof(PupilAdaptation.PupilId));
            Belongs<PupilAdaptation, MovementTask>(adaptation, nameof(PupilAdaptation.TaskId));
        });
        model.Entity<Incident>(incident =>
        {
            incident.ToTable("incidents").HasKey(i => new { i.SchoolId, i.Id });
            incident.HasOne<School>().WithMany().HasForeignKey(i => i.SchoolId).OnDelete(DeleteBehavior.Restrict);
            Belongs<Incident, Lesson>(incident, nameof(Incident.LessonId));
            Belongs<Incident, MovementTask>(incident, nameof(Incident.TaskId));
        });
        model.Entity<LessonRisk>(risk =>
        {
            risk.ToTable("lesson_risks").HasKey(r => new { r.SchoolId, r.LessonId });
            Belongs<LessonRisk, Lesson>(risk, nameof(LessonRisk.LessonId));
        });
    }

    private static void AddPlanning(ModelBuilder model)
    {
        model.Entity<SchoolTaskDesign>(design =>
        {
            design.ToTable("task_designs").HasKey(d => new { d.SchoolId, d.TaskId });
            Belongs<SchoolTaskDesign, MovementTask>(design, nameof(SchoolTaskDesign.TaskId));
        });
        model.Entity<SchoolHall>(hall =>
        {
            hall.ToTable("halls").HasKey(h => new { h.SchoolId, h.Id });
            hall.HasOne<School>().WithMany().HasForeignKey(h => h.SchoolId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<LessonSpace>(space =>
        {
            space.ToTable("lesson_spaces").HasKey(s => new { s.SchoolId, s.LessonId });
            Belongs<LessonSpace, Lesson>(space, nameof(LessonSpace.LessonId));
            Belongs<LessonSpace, SchoolHall>(space, nameof(LessonSpace.HallId));
        });
        model.Entity<LessonGroups>(groups =>
        {
            // The pupils are lists: what a foreign key would refuse is refused where groups are saved.
            groups.ToTable("lesson_groups").HasKey(g => new { g.SchoolId, g.LessonId });
            Belongs<LessonGroups, Lesson>(groups, nameof(Records.Groups.LessonGroups.LessonId));
        });
        model.Entity<TeachingUnit>(unit =>
        {
            unit.ToTable("units").HasKey(u => new { u.SchoolId, u.Id });
            Belongs<TeachingUnit, SchoolClass>(unit, nameof(TeachingUnit.ClassId));
        });
    }

    private static void Belongs<TRow, TParent>(EntityTypeBuilder<TRow> row, string parentId) where TRow : class where TParent : class =>
        row.HasOne<TParent>().WithMany().HasForeignKey("SchoolId", parentId).OnDelete(DeleteBehavior.Restrict);
}
