using System.Globalization;
using Slantwise.Desk.Progress;
using Slantwise.Desk.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Safety;

/// <summary>What is around the log: the lessons, classes, tasks and pupils it names, and what they are called.</summary>
/// <param name="Lessons">The school's lessons, earliest first.</param>
/// <param name="Classes">Its classes.</param>
/// <param name="Tasks">Its tasks.</param>
/// <param name="Pupils">Its pupils.</param>
/// <param name="Enrolments">Who belongs to which class.</param>
public sealed record IncidentPlace(
    IReadOnlyList<Lesson> Lessons, IReadOnlyList<SchoolClass> Classes, IReadOnlyList<MovementTask> Tasks, IReadOnlyList<Pupil> Pupils, IReadOnlyList<Enrolment> Enrolments)
{
    /// <summary>Loads it.</summary>
    /// <param name="desk">The school.</param>
    public static async Task<IncidentPlace> LoadAsync(DeskSchool desk) => new(
        await desk.Store.ListLessonsAsync(desk.SchoolId),
        await desk.Store.ListClassesAsync(desk.SchoolId),
        await desk.Store.ListTasksAsync(desk.SchoolId),
        await desk.Store.ListPupilsAsync(desk.SchoolId),
        await desk.Store.ListEnrolmentsAsync(desk.SchoolId));

    /// <summary>A lesson by its id; none for none and for one that is not here.</summary>
    /// <param name="lessonId">The id.</param>
    public Lesson? LessonOf(Guid? lessonId) => Lessons.FirstOrDefault(l => l.Id == lessonId);

    /// <summary>A lesson with its class: "7 Heron: One foot".</summary>
    /// <param name="lesson">Any lesson of the school.</param>
    public string NameOf(Lesson lesson) => DeskWords.Say("LessonNamed", Classes.FirstOrDefault(c => c.Id == lesson.ClassId)?.Name ?? "", LessonName.Of(lesson));

    /// <summary>What a task is called; none for none and for one that is not here.</summary>
    /// <param name="taskId">The task.</param>
    public string? TaskNameOf(Guid? taskId) => Tasks.FirstOrDefault(t => t.Id == taskId)?.Name;

    /// <summary>The pupils of a class now, by label.</summary>
    /// <param name="classId">The class; none for nobody.</param>
    public IReadOnlyList<Pupil> PupilsOf(Guid? classId)
    {
        var members = Enrolments.Where(e => e.ClassId == classId && e.IsCurrent).Select(e => e.PupilId).ToHashSet();
        return [.. Pupils.Where(p => members.Contains(p.Id))];
    }

    /// <summary>The day, and the time where it was noted.</summary>
    /// <param name="incident">Any incident.</param>
    public static string WhenOf(Incident incident)
    {
        var day = incident.Day.ToString("d", CultureInfo.CurrentCulture);
        return incident.MinuteOfDay is { } minute ? $"{day}, {TimeOnly.MinValue.AddMinutes(minute).ToString("t", CultureInfo.CurrentCulture)}" : day;
    }
}
