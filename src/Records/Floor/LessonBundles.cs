using System.Globalization;
using Slantwise.Records.Floor.Bundles;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Floor;

/// <summary>Makes what a device takes along for a lesson: all it needs without a network, and nothing it may not see.</summary>
/// <remarks>
/// A level that policy or restrictions remove for everybody on the device is in no part of its bundle: not among the tasks, not in a translation, not as a figure.
/// One that is removed for some of them only is there for the others, and missing from the offers of those it is removed for.
/// </remarks>
public static class LessonBundles
{
    /// <summary>The bundle of a device.</summary>
    /// <param name="record">The lesson, with its frozen sheet, its class's current pupils, their restrictions and every entry.</param>
    /// <param name="kind">What the device is there for.</param>
    /// <param name="pupilIds">Whom it serves: one pupil for a pupil's device, one or two for a pair's; nobody for the others, which are the class's or have no pupil.</param>
    /// <param name="language">The language of the figures' words; the sheet's own stand as they were printed.</param>
    /// <returns>Pupils in the order of the record, by label; a task of which nothing is left stands there without a level.</returns>
    /// <exception cref="InvalidOperationException">The lesson has no frozen sheet yet.</exception>
    /// <exception cref="ArgumentException">The wrong number of pupils for the kind, a pupil twice, or one who is not in the lesson's class.</exception>
    public static LessonBundle Of(LessonRecord record, FloorDeviceKind kind, IReadOnlyList<Guid> pupilIds, CultureInfo language)
    {
        if (record.Sheet is not { } sheet) throw new InvalidOperationException("The lesson has no frozen sheet yet: choose one and open it before devices join.");
        var pupils = PupilsOf(record, kind, pupilIds);
        var offers = pupils.ToDictionary(p => p.Id, p => (IReadOnlyList<BundleOffer>)[.. sheet.Content.Tasks.Select(task => OfferOf(record, kind, p.Id, task))]);
        var tasks = sheet.Content.Tasks.Select(task => task with { Levels = Shown(record, kind, task, offers.Values) }).ToList();
        var figures = new BundleFigures(tasks.SelectMany(t => t.Levels));
        return new LessonBundle
        {
            SchoolId = record.School.Id,
            LessonId = record.Lesson.Id,
            Date = record.Lesson.Date,
            LessonTitle = record.Lesson.Title,
            ClassName = record.Class.Name,
            Kind = kind,
            SheetVersion = sheet.Version,
            SheetTitle = sheet.Content.Title,
            SetCount = sheet.Content.SetCount,
            TrialCount = sheet.Content.TrialCount,
            Predicts = sheet.Content.Predicts,
            Tasks = [.. tasks.Select(task => TaskOf(task, figures))],
            Figures = figures.In(language),
            Translations = BundleTranslations.Of(sheet.Content.Tasks, tasks, figures, language),
            Pupils = [.. pupils.Select(p => new BundlePupil(p.Id, p.Label, offers[p.Id]))],
            Phases = kind == FloorDeviceKind.Teacher ? [.. record.Lesson.Phases.Select(p => new BundlePhase(p.Kind, p.DurationMin, p.Note))] : [],
            Entries = BundleEntries.Of(record.Entries, kind, pupils.Select(p => p.Id).ToHashSet()),
        };
    }

    /// <summary>A task as a bundle has it.</summary>
    /// <param name="task">With the levels to show and no others.</param>
    /// <param name="figures">The bundle's figures.</param>
    internal static BundleTask TaskOf(SheetTask task, BundleFigures figures) => new(
        task.TaskId, task.Name, task.Purpose, task.Cues, task.Caution,
        [.. task.Levels.Select(l => new BundleLevel(l.Id, l.Name, l.Dose.Kind, l.Dose.Amount, figures.KeyOf(l)))]);

    private static List<Pupil> PupilsOf(LessonRecord record, FloorDeviceKind kind, IReadOnlyList<Guid> pupilIds)
    {
        var (fewest, most) = kind switch { FloorDeviceKind.Pupil => (1, 1), FloorDeviceKind.Pair => (1, 2), _ => (0, 0) };
        if (pupilIds.Count < fewest || pupilIds.Count > most)
            throw new ArgumentException($"A device of the kind {kind} serves {fewest} to {most} pupils of its own, not {pupilIds.Count}.", nameof(pupilIds));
        if (pupilIds.Distinct().Count() < pupilIds.Count) throw new ArgumentException($"The pupil {pupilIds[0]} is named twice.", nameof(pupilIds));
        if (pupilIds.Where(id => record.Pupils.All(p => p.Id != id)).ToList() is [var stranger, ..])
            throw new ArgumentException($"The pupil {stranger} is not in the lesson's class.", nameof(pupilIds));
        return kind switch
        {
            FloorDeviceKind.Board => [],
            FloorDeviceKind.Station or FloorDeviceKind.Teacher => [.. record.Pupils],
            _ => [.. record.Pupils.Where(p => pupilIds.Contains(p.Id))],
        };
    }

    // The teacher's phone shows no pupil's task as the pupil does it, so it takes no adaptation along.
    private static BundleOffer OfferOf(LessonRecord record, FloorDeviceKind kind, Guid pupilId, SheetTask task) => new(
        task.TaskId,
        [.. Offer.LevelsFor(task.Levels, record.School.Policy, record.Restrictions.Where(r => r.PupilId == pupilId), record.Lesson.Date).Select(l => l.Id)],
        kind != FloorDeviceKind.Teacher && record.AdaptationFor(pupilId, task.TaskId) is { Length: > 0 } text ? text : null);

    // The board is nobody's: what the school allows anybody.
    private static IReadOnlyList<Level> Shown(LessonRecord record, FloorDeviceKind kind, SheetTask task, IEnumerable<IReadOnlyList<BundleOffer>> offers)
    {
        if (kind == FloorDeviceKind.Board) return Offer.LevelsFor(task.Levels, record.School.Policy, [], record.Lesson.Date);
        var offered = offers.SelectMany(o => o).Where(o => o.TaskId == task.TaskId).SelectMany(o => o.LevelIds).ToHashSet();
        return [.. task.Levels.Where(l => offered.Contains(l.Id))];
    }
}
