namespace Slantwise.Records.Simulation;

/// <summary>A level as the tables name it.</summary>
/// <param name="Number">Its running number over all tasks, from 1.</param>
/// <param name="TaskNumber">Its task, from 1.</param>
/// <param name="TaskName">The task's name.</param>
/// <param name="NumberInTask">Its place in the task, from 1.</param>
/// <param name="Truth">The level itself.</param>
internal sealed record LevelKey(int Number, int TaskNumber, string TaskName, int NumberInTask, LevelTruth Truth);

/// <summary>The short keys that a simulation's tables use instead of ids.</summary>
internal sealed class SimulationKeys
{
    private readonly Dictionary<Guid, string> _codes;
    private readonly Dictionary<Guid, int> _lessons;
    private readonly Dictionary<Guid, int> _tasks;
    private readonly Dictionary<Guid, LevelKey> _levels;
    private readonly List<string> _families;

    public SimulationKeys(SimulatedClass simulated)
    {
        _codes = simulated.Plan.Pupils.ToDictionary(p => p.Id, p => p.Code);
        _lessons = simulated.Plan.Lessons.Select((l, i) => (l.Lesson.Id, i)).ToDictionary(l => l.Id, l => l.i + 1);
        var names = simulated.Plan.Lessons.SelectMany(l => l.Content.Tasks).GroupBy(t => t.TaskId).ToDictionary(g => g.Key, g => g.First().Name);
        var levels = simulated.Truth.Levels;
        _tasks = levels.Select(l => l.TaskId).Distinct().Select((id, i) => (id, i)).ToDictionary(t => t.id, t => t.i + 1);
        _families = levels.Select(l => l.Family).Distinct().ToList();
        Levels = levels
            .Select((l, i) => new LevelKey(i + 1, _tasks[l.TaskId], names[l.TaskId], levels.Take(i).Count(o => o.TaskId == l.TaskId) + 1, l))
            .ToList();
        _levels = Levels.ToDictionary(key => key.Truth.Level.Id);
    }

    /// <summary>All levels by number.</summary>
    public IReadOnlyList<LevelKey> Levels { get; }

    public string CodeOf(Guid pupilId) => _codes[pupilId];

    public int LessonNumber(Guid lessonId) => _lessons[lessonId];

    public int TaskNumber(Guid taskId) => _tasks[taskId];

    public LevelKey LevelOf(Guid levelId) => _levels[levelId];

    public int FamilyNumber(string family) => _families.IndexOf(family) + 1;
}
