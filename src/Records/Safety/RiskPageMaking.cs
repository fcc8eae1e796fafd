using System.Globalization;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Safety;

/// <summary>Puts a risk page together.</summary>
internal sealed class RiskPageMaking(LessonRecord record, RiskMaterial material, CultureInfo culture)
{
    private const int MostEarlier = 3;

    private readonly IReadOnlyList<SheetTask> _tasks = material.Content?.Tasks ?? [];
    private readonly List<RiskGap> _gaps = [];

    public RiskPage Page()
    {
        var (notes, restricted) = (material.Notes, Restricted());
        if (string.IsNullOrWhiteSpace(record.School.EmergencyNotes)) Miss(RiskGapKind.NoEmergencyNotes);
        if (_tasks.Count == 0) Miss(RiskGapKind.NoSheet);
        else if (record.Lesson.MatCount is null or 0 && _tasks.Any(t => DesignOf(t.TaskId)?.Mats.MatCount > 0)) Miss(RiskGapKind.NoMats);
        var tasks = _tasks.Select(TaskOf).ToList();
        return new RiskPage
        {
            Record = record,
            Culture = culture,
            Tasks = tasks,
            ProposedChecks = [.. RiskChecks.Of(record, [.. _tasks.Select(t => DesignOf(t.TaskId)).OfType<TaskDesign>()], tasks, culture)],
            OwnChecks = notes.EquipmentChecks,
            RestrictionLines = [.. RestrictionLines(restricted)],
            NamedPupils = notes.ShowsNames ? [.. restricted.OrderBy(p => p.Label, StringComparer.Create(culture, ignoreCase: true)).ThenBy(p => p.Code, StringComparer.Ordinal)] : [],
            Notes = notes.Notes,
            Gaps = _gaps,
        };
    }

    private RiskTask TaskOf(SheetTask task, int index)
    {
        var design = DesignOf(task.TaskId);
        var offered = OfferedTo(task, []);
        var others = _tasks.Where(t => t.TaskId != task.TaskId).Select(t => DesignOf(t.TaskId)?.Pattern).OfType<MovementPattern>();
        var reasons = RiskRule.ReasonsOf(offered, design?.Pattern, others);
        var own = material.Notes.Tasks.FirstOrDefault(t => t.TaskId == task.TaskId);
        if (design is null) Miss(RiskGapKind.NoDesign, task.Name);
        if (offered.Count == 0) Miss(RiskGapKind.NothingOffered, task.Name);
        else if (record.Pupils.Count(p => OfferedTo(task, RestrictionsOf(p)).Count == 0) is > 0 and var without)
            _gaps.Add(new RiskGap(RiskGapKind.PupilsWithoutLevel, RiskWords.TextCount("GapPupilsWithoutLevel", culture, without, task.Name)));
        var tallestM = RiskRule.TallestM(offered, design?.Pattern);
        return new RiskTask
        {
            TaskId = task.TaskId,
            Number = index + 1,
            Name = task.Name,
            Caution = task.Caution,
            Reasons = reasons,
            Because = offered.Count == 0 ? Say("BecauseNothingOffered")
                : reasons.Count == 0 ? Say("BecauseNothing")
                : Say("Because", string.Join(", ", reasons.Select(r => Say("Reason" + r)))),
            ProposedLevel = offered.Count == 0 ? null : RiskRule.LevelOf(reasons),
            OwnLevel = own?.Level,
            ProposedControls = offered.Count == 0 ? [] : RiskControls.Of(new RiskControls.Known(reasons, offered, design, record, NamesOf(design)), culture),
            OwnControls = own?.Controls ?? [],
            PolicyLines = [.. RiskControls.PolicyLines(task, offered, reasons, record.School.Policy, culture)],
            Questions = tallestM > RiskRule.TallM && RiskRule.LevelOf(reasons) < RiskLevel.High ? [Say("QuestionTall", tallestM)] : [],
            Earlier = [.. material.Incidents.Where(i => i.TaskId == task.TaskId && i.Day <= record.Lesson.Date).Take(MostEarlier)],
        };
    }

    private IEnumerable<string> RestrictionLines(IReadOnlyList<Pupil> restricted)
    {
        if (restricted.Count == 0)
        {
            yield return Say("RestrictedNone");
            yield break;
        }
        yield return RiskWords.TextCount("Restricted", culture, restricted.Count);
        // What is removed for somebody, beyond what the policy removes for everybody.
        var removed = restricted.Select(p => _tasks.SelectMany(t => OfferedTo(t, []).Except(OfferedTo(t, RestrictionsOf(p))).Select(l => (t.TaskId, l.Id))).ToList()).ToList();
        var fewer = removed.Count(r => r.Count > 0);
        if (fewer == 0)
        {
            yield return Say("FewerNone");
            yield break;
        }
        yield return RiskWords.TextCount("Fewer", culture, fewer, removed.SelectMany(r => r).Distinct().Count(), _tasks.Sum(t => t.Levels.Count));
    }

    private List<Pupil> Restricted() => [.. record.Pupils.Where(p => RestrictionsOf(p).Any(r => r.HoldsOn(record.Lesson.Date)))];

    private IReadOnlyList<Restriction> RestrictionsOf(Pupil pupil) => [.. record.Restrictions.Where(r => r.PupilId == pupil.Id)];

    private IReadOnlyList<Level> OfferedTo(SheetTask task, IReadOnlyList<Restriction> restrictions) =>
        Offer.LevelsFor(task.Levels, record.School.Policy, restrictions, record.Lesson.Date);

    // A school's own design of a task comes before the library's.
    private TaskDesign? DesignOf(Guid taskId) =>
        material.Designs.FirstOrDefault(d => d.Id == taskId) ?? TaskLibrary.Find(taskId);

    private IReadOnlyList<string> NamesOf(TaskDesign? design) =>
        [.. (design?.Prerequisites ?? []).Select(DesignOf).OfType<TaskDesign>().Select(d => d.ToTask(culture.TwoLetterISOLanguageName, record.School.Id).Name)];

    private void Miss(RiskGapKind kind, params object[] gaps) => _gaps.Add(new RiskGap(kind, Say("Gap" + kind, gaps)));

    private string Say(string key, params object[] gaps) => RiskWords.Text(key, culture, gaps);
}
