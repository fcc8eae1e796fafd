using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Checks;

/// <summary>A lesson's record laid out for checking many entries: one is built for a whole file.</summary>
internal sealed class EntryLookup
{
    private readonly LessonRecord _record;
    private readonly Dictionary<Guid, Pupil> _pupils;
    private readonly Dictionary<Guid, SheetTask> _tasks;
    private readonly HashSet<Guid> _entryIds;
    private readonly Dictionary<(Guid Pupil, Guid Task), IReadOnlyList<Level>> _offered = [];

    public EntryLookup(LessonRecord record)
    {
        _record = record;
        _pupils = record.Pupils.ToDictionary(p => p.Id);
        _tasks = (record.Sheet?.Content.Tasks ?? []).DistinctBy(t => t.TaskId).ToDictionary(t => t.TaskId);
        _entryIds = record.Entries.Select(e => e.Id).ToHashSet();
    }

    /// <summary>Makes an entry known, so that a later one may correct it.</summary>
    public void Learn(Entry entry) => _entryIds.Add(entry.Id);

    public bool Knows(Guid entryId) => _entryIds.Contains(entryId);

    public SheetTask? TaskOf(Guid? taskId) => taskId is { } id ? _tasks.GetValueOrDefault(id) : null;

    public SheetPlace PlaceOf(Entry entry) => new(
        entry.TaskId, TaskOf(entry.TaskId)?.Name, entry.SetNumber, entry.TrialNumber,
        entry.PupilId is { } id && _pupils.TryGetValue(id, out var pupil) ? pupil.Label : null);

    public IReadOnlyList<Level> Offered(Guid pupilId, SheetTask task)
    {
        if (!_offered.TryGetValue((pupilId, task.TaskId), out var levels))
        {
            levels = Offer.LevelsFor(
                task.Levels, _record.School.Policy, _record.Restrictions.Where(r => r.PupilId == pupilId), _record.Lesson.Date);
            _offered[(pupilId, task.TaskId)] = levels;
        }
        return levels;
    }

    /// <summary>Everything about one entry.</summary>
    /// <param name="where">What leads each sentence: a <see cref="FilePlace"/> or a <see cref="SheetPlace"/>.</param>
    /// <param name="isFromFile">Whether values that cannot be are refused even where a person may have written them.</param>
    public List<Finding> Check(Entry entry, object where, bool isFromFile)
    {
        var findings = new List<Finding>();
        if (entry.SchoolId != _record.School.Id || entry.LessonId != _record.Lesson.Id) findings.Add(Finding.Refused("EntryOfOtherLesson", where));
        if (string.IsNullOrWhiteSpace(entry.DeviceId) || entry.DeviceId.Length > Limits.DeviceIdLength || TextCheck.HasControl(entry.DeviceId))
        {
            findings.Add(Finding.Refused("EntryDevice", where, Limits.DeviceIdLength));
        }
        if (entry.DeviceSequence < 1) findings.Add(Finding.Refused("EntrySequence", where, entry.DeviceSequence));
        if (!Enum.IsDefined(entry.Source)) findings.Add(Finding.Refused("EntryValueUnknown", where));
        if (entry.SupersedesId is { } corrected ? !Knows(corrected) : entry.Fact is Withdrawal) findings.Add(Finding.Refused("EntryCorrectsUnknown", where));
        findings.AddRange(CheckFact(entry.PupilId, entry.TaskId, entry.SetNumber, entry.TrialNumber, entry.Fact, where, isFromFile));
        return findings;
    }

    /// <summary>Everything about a fact and what it is about.</summary>
    public List<Finding> CheckFact(Guid? pupilId, Guid? taskId, int? setNumber, int? trialNumber, EntryFact fact, object where, bool isFromFile)
    {
        var findings = new List<Finding>();
        var needs = FactNeeds.Of(fact);
        AddNumbers(findings, pupilId, taskId, setNumber, trialNumber, needs, where);
        if (findings.Count == 0) FactCheck.Add(findings, fact, _record.Sheet?.Content, TaskOf(taskId), where, isFromFile);
        if (findings.Count == 0 && fact is Choice choice && pupilId is { } pupil && TaskOf(taskId) is { } task
            && Offered(pupil, task).All(l => l.Id != choice.LevelId))
        {
            findings.Add(Finding.Flagged("ChoiceNotOffered", where, LevelNumber(task, choice.LevelId)));
        }
        return findings;
    }

    public static int LevelNumber(SheetTask task, Guid levelId)
    {
        for (var i = 0; i < task.Levels.Count; i++)
        {
            if (task.Levels[i].Id == levelId) return i + 1;
        }
        return 0;
    }

    private void AddNumbers(
        List<Finding> findings, Guid? pupilId, Guid? taskId, int? setNumber, int? trialNumber, FactNeeds needs, object where)
    {
        if (needs.Fits(pupilId, taskId, setNumber, trialNumber) is false) findings.Add(Finding.Refused("EntryPartsDoNotFit", where));
        if (pupilId is { } pupil && !_pupils.ContainsKey(pupil)) findings.Add(Finding.Refused("EntryPupilUnknown", where));
        if (taskId is null && setNumber is null && trialNumber is null) return;
        if (_record.Sheet is not { } sheet)
        {
            findings.Add(Finding.Refused("EntryWithoutSheet", where));
            return;
        }
        if (taskId is not null && TaskOf(taskId) is null) findings.Add(Finding.Refused("EntryTaskUnknown", where, sheet.Content.Tasks.Count));
        if (setNumber is { } set && (set < 1 || set > sheet.Content.SetCount)) findings.Add(Finding.Refused("EntrySetUnknown", where, set, sheet.Content.SetCount));
        if (trialNumber is { } trial && (trial < 1 || trial > sheet.Content.TrialCount)) findings.Add(Finding.Refused("EntryTrialUnknown", where, trial, sheet.Content.TrialCount));
    }
}
