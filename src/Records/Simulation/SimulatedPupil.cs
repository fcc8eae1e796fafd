using Slantwise.Records.Entries;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>One pupil going through the lessons of a plan.</summary>
internal sealed partial class SimulatedPupil
{
    private readonly SimulationPlan _plan;
    private readonly SimulationTruth _truth;
    private readonly PupilTruth _self;
    private readonly IReadOnlyList<Restriction> _restrictions;
    private readonly Draws _draws;
    private readonly SeededIds _ids;
    private readonly Dictionary<Guid, double> _impressions = [];
    private readonly Dictionary<Guid, Guid> _nextLevels = [];
    private int _lessonsBefore;
    private int _trialsBefore;

    public SimulatedPupil(SimulationPlan plan, SimulationTruth truth, int index)
    {
        _plan = plan;
        _truth = truth;
        _self = truth.Pupils[index];
        _restrictions = plan.Restrictions.Where(r => r.PupilId == _self.PupilId).ToList();
        _draws = Draws.For(plan.Seed, TruthMaker.FirstPupilConduct + (ulong)index);
        _ids = new SeededIds(Draws.For(plan.Seed, TruthMaker.FirstPupilIds + (ulong)index));
    }

    /// <summary>Goes through one lesson.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="lessonsBefore">How many came before it.</param>
    /// <param name="isTyped">Whether the pupil's sheet was typed in, or only the register.</param>
    public IReadOnlyList<Entry> Attend(SimulatedLesson lesson, int lessonsBefore, bool isTyped)
    {
        (_lessonsBefore, _trialsBefore) = (lessonsBefore, 0);
        var notes = new LessonNotes(_plan, lesson, _self.PupilId, _ids, _draws.NextIndex(1 << 20));
        var isPresent = !_draws.Happens(_plan.Mess.AbsentFraction);
        var register = notes.Put(lesson.StartsAt, new Presence(isPresent));
        if (isPresent)
        {
            for (var i = 0; i < lesson.Content.Tasks.Count; i++) Practise(notes, lesson, i);
            TalkWithTeacher(notes, lesson);
        }
        return isTyped ? notes.Entries : [register];
    }

    private void Practise(LessonNotes notes, SimulatedLesson lesson, int taskIndex)
    {
        var task = lesson.Content.Tasks[taskIndex];
        var offered = Offer.LevelsFor(task.Levels, _plan.School.Policy, _restrictions, lesson.Lesson.Date);
        if (offered.Count == 0) return;

        var level = Enter(task, offered);
        SetOutcome? last = null;
        for (var set = 1; set <= lesson.Content.SetCount; set++)
        {
            var place = new SetPlace(task, level, set, (taskIndex * lesson.Content.SetCount) + set - 1, lesson.Content);
            last = DoSet(notes, place, last);
            var (next, nextLevel) = Decide(offered, level, last.SuccessCount / (double)lesson.Content.TrialCount);
            var decision = new Decision(next, ReasonFor(next));
            if (!_draws.Happens(_plan.Mess.MissingDecisionFraction))
            {
                notes.Put(notes.At(place.Index, lesson.Content.TrialCount + 3), decision, task.TaskId, set);
            }
            level = nextLevel;
        }
        _nextLevels[task.TaskId] = level.Id;
    }

    private void TalkWithTeacher(LessonNotes notes, SimulatedLesson lesson)
    {
        if (!_draws.Happens(_plan.Mess.VisitFraction)) return;
        var setIndex = _draws.NextIndex(lesson.Content.Tasks.Count * lesson.Content.SetCount);
        // Mostly questions about decisions and cues: a teacher who knows this style.
        var topic = (VisitTopic)(1 + _draws.NextWeighted([5, 4, 3, 1]));
        var form = topic == VisitTopic.Safety ? VisitForm.Corrected : (VisitForm)(1 + _draws.NextWeighted([6, 3, 1, 1]));
        notes.Put(notes.At(setIndex, 4), new Visit(topic, form), lesson.Content.Tasks[setIndex / lesson.Content.SetCount].TaskId);
    }

    private string ReasonFor(NextLevel next)
    {
        var isWritten = _draws.Happens(0.4);
        if (!_plan.Reasons.TryGetValue(next, out var reasons) || reasons.Count == 0) return "";
        var reason = reasons[_draws.NextIndex(reasons.Count)];
        return isWritten ? reason : "";
    }

    private double SuccessLogits(Level level) => _truth.SuccessLogits(_self.PupilId, level.Id, _lessonsBefore, _trialsBefore);

    private sealed record SetPlace(SheetTask Task, Level Level, int Number, int Index, SheetContent Content);

    private sealed record SetOutcome(Guid LevelId, int SuccessCount);
}
