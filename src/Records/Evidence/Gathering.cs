using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Evidence;

/// <summary>What one lesson or several say, gathered by task, by pupil and for the class.</summary>
internal sealed record Gathering(
    IReadOnlyList<TaskEvidence> Tasks, IReadOnlyList<PupilEvidence> Pupils, ClassEvidence Class, IReadOnlyList<Conference> Conferences)
{
    public static Gathering Of(IReadOnlyList<LessonReading> lessons)
    {
        var sheetTasks = WithUnknown(SheetMerge.Of(lessons.Select(l => l.SheetTasks).ToList()), lessons.SelectMany(l => l.Sets));
        var taskNumbers = sheetTasks.Select((t, i) => (t.TaskId, Number: i + 1)).ToDictionary(x => x.TaskId, x => x.Number);
        var sets = lessons
            .SelectMany(l => l.Sets.Select(s => Numbered(s, l, sheetTasks[taskNumbers[s.TaskId] - 1])))
            .OrderBy(s => taskNumbers[s.TaskId]).ThenBy(s => s.LessonNumber).ThenBy(s => s.PupilId).ThenBy(s => s.SetNumber)
            .ToList();
        var tasks = sheetTasks
            .Select(t => TaskEvidence.Of(t, taskNumbers[t.TaskId], sets.Where(s => s.TaskId == t.TaskId).ToList()))
            .ToList();
        var setsByPupil = sets.ToLookup(s => s.PupilId);
        var pupils = lessons.Reverse().SelectMany(l => l.Record.Pupils).DistinctBy(p => p.Id)
            .OrderBy(p => p.Label, StringComparer.InvariantCultureIgnoreCase).ThenBy(p => p.Code, StringComparer.Ordinal)
            .Select(p => PupilOf(p, lessons, setsByPupil[p.Id].ToList(), taskNumbers, tasks))
            .ToList();
        return new Gathering(
            tasks,
            pupils,
            ClassEvidence.Of(pupils.Count, pupils, tasks, sets, lessons.SelectMany(l => l.VisitsByPupil.SelectMany(v => v))),
            ConferenceList.Of(pupils, tasks, lessons));
    }

    private static PupilEvidence PupilOf(
        Pupil pupil, IReadOnlyList<LessonReading> lessons, IReadOnlyList<SetEvidence> sets,
        Dictionary<Guid, int> taskNumbers, IReadOnlyList<TaskEvidence> tasks)
    {
        var written = sets.Select(s => s.LessonId).ToHashSet();
        return new PupilEvidence
        {
            PupilId = pupil.Id,
            Label = pupil.Label,
            Tasks = sets.GroupBy(s => s.TaskId)
                .OrderBy(g => taskNumbers[g.Key])
                .Select(g => PupilTaskEvidence.Of(g.Key, taskNumbers[g.Key], g.ToList()))
                .ToList(),
            Visits = lessons.SelectMany(l => l.VisitsByPupil[pupil.Id]).OrderBy(v => v.MadeAt).ThenBy(v => v.EntryId).ToList(),
            Notes = lessons.SelectMany(l => l.NotesByPupil[pupil.Id]).OrderBy(n => n.MadeAt).ThenBy(n => n.EntryId).ToList(),
            AbsentLessonIds = lessons.Where(l => l.AbsenceEntryIds.ContainsKey(pupil.Id)).Select(l => l.LessonId).ToList(),
            AbsenceEntryIds = lessons.Where(l => l.AbsenceEntryIds.ContainsKey(pupil.Id)).Select(l => l.AbsenceEntryIds[pupil.Id]).ToList(),
            EmptyLessonIds = lessons
                .Where(l => l.Sets.Count > 0 && !written.Contains(l.LessonId) && !l.AbsenceEntryIds.ContainsKey(pupil.Id))
                .Select(l => l.LessonId)
                .ToList(),
            Flags = FlagList.Of(pupil.Id, lessons, sets, tasks),
        };
    }

    // Entries about a task that no sheet holds are shown under its id, so that nothing written is lost.
    private static List<SheetTask> WithUnknown(IReadOnlyList<SheetTask> known, IEnumerable<SetEvidence> sets)
    {
        var ids = known.Select(t => t.TaskId).ToHashSet();
        return known
            .Concat(sets.Select(s => s.TaskId).Where(id => !ids.Contains(id)).Distinct().Order().Select(id => new SheetTask { TaskId = id, Name = "" }))
            .ToList();
    }

    // The lesson's own sheet numbers levels and cues its own way: here they get the numbers of the merged list.
    private static SetEvidence Numbered(SetEvidence set, LessonReading lesson, SheetTask merged)
    {
        var levelIndex = merged.Levels.ToList().FindIndex(l => l.Id == set.LevelId);
        var own = lesson.SheetTasks.FirstOrDefault(t => t.TaskId == set.TaskId)?.Cues ?? [];
        var mergedCues = merged.Cues.ToList();
        int NumberOf(int cue) => cue >= 1 && cue <= own.Count ? mergedCues.IndexOf(own[cue - 1]) + 1 : cue;
        return set with
        {
            LevelNumber = levelIndex < 0 ? null : levelIndex + 1,
            TickedCueNumbers = set.TickedCueNumbers.Select(NumberOf).Order().ToList(),
            UntickedCueNumbers = set.UntickedCueNumbers.Select(NumberOf).Order().ToList(),
            Checks = set.Checks.Select(c => c with { CueNumber = NumberOf(c.CueNumber) }).ToList(),
        };
    }
}
