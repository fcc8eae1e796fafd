using Slantwise.Records.Entries;

namespace Slantwise.Records.Simulation;

/// <summary>Collects one pupil's entries of one lesson; they get their running numbers when all pupils' are put in order.</summary>
internal sealed class LessonNotes(SimulationPlan plan, SimulatedLesson lesson, Guid pupilId, SeededIds ids, int jitterMs)
{
    private static readonly TimeSpan FirstSet = TimeSpan.FromMinutes(8);
    private static readonly TimeSpan AllSets = TimeSpan.FromMinutes(40);
    private static readonly TimeSpan Corrections = TimeSpan.FromMinutes(50);

    private readonly List<Entry> _entries = [];

    /// <summary>What was noted so far.</summary>
    public IReadOnlyList<Entry> Entries => _entries;

    /// <summary>The moment of a step of a set.</summary>
    /// <param name="setIndex">The set's place among all sets of the lesson, from 0.</param>
    /// <param name="step">0 the choice, 1 the prediction, from 2 the trials, then ticks and decision.</param>
    public DateTimeOffset At(int setIndex, int step)
    {
        var setCount = lesson.Content.Tasks.Count * lesson.Content.SetCount;
        var setMs = (long)AllSets.TotalMilliseconds / setCount;
        var stepMs = setMs / (lesson.Content.TrialCount + 6);
        return lesson.StartsAt + FirstSet + TimeSpan.FromMilliseconds((setIndex * setMs) + (step * stepMs) + (jitterMs % stepMs));
    }

    /// <summary>When the teacher goes through the sheets again.</summary>
    public DateTimeOffset AtCorrection(int number) => lesson.StartsAt + Corrections + TimeSpan.FromSeconds(number) + TimeSpan.FromMilliseconds(jitterMs % 1000);

    /// <summary>Notes a fact.</summary>
    public Entry Put(
        DateTimeOffset at, EntryFact fact, Guid? taskId = null, int? setNumber = null, int? trialNumber = null, Guid? supersedesId = null)
    {
        var entry = new Entry
        {
            SchoolId = plan.School.Id,
            Id = ids.At(at),
            LessonId = lesson.Lesson.Id,
            PupilId = pupilId,
            TaskId = taskId,
            SetNumber = setNumber,
            TrialNumber = trialNumber,
            Fact = fact,
            Source = plan.Source,
            DeviceId = plan.DeviceId,
            DeviceSequence = 0,
            MadeAt = at,
            SupersedesId = supersedesId,
        };
        _entries.Add(entry);
        return entry;
    }
}
