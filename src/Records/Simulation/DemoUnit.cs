using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Simulation;

/// <summary>The five sheets of the invented unit, and what is true about its tasks.</summary>
internal sealed class DemoUnit
{
    private const string OneFoot = "one-foot-balance.json";
    private const string Arabesque = "arabesque.json";
    private const string VSit = "v-sit.json";
    private const string Frog = "frog-balance.json";
    private const string Rope = "rope-jumping.json";
    private const string Throw = "target-throw.json";

    // The library may grow; what is true about the invented class was written for these.
    private static readonly string[] Files = [Arabesque, Frog, OneFoot, Rope, Throw, VSit];

    private readonly Dictionary<string, MovementTask> _tasks;

    /// <summary>The unit with the library's tasks, in English.</summary>
    /// <exception cref="InvalidDataException">A library file cannot be read.</exception>
    public DemoUnit(Guid schoolId)
    {
        _tasks = TaskLibrary.Read(CultureInfo.GetCultureInfo("en"), schoolId).Where(reading => Files.Contains(reading.FileName)).ToDictionary(
            reading => reading.FileName,
            reading => reading.Task ?? throw new InvalidDataException(reading.Findings[0].Sentence(CultureInfo.InvariantCulture)));
        Sheets =
        [
            new("One foot", [Content("Still as a post", 3, 5, PredictionKind.SuccessCount, All(OneFoot))]),
            new("One foot and rope",
            [
                // The first class was taught before the running step was added.
                Content("Still, then springy", 2, 5, PredictionKind.SuccessCount, All(OneFoot), First(Rope, 4)),
                Content("Still, then springy", 2, 5, PredictionKind.SuccessCount, All(OneFoot), All(Rope)),
            ]),
            new("Arabesque and V-sit", [Content("Two letters: T and V", 2, 4, PredictionKind.HoldS, All(Arabesque), All(VSit))]),
            new("Rope and target", [Content("Beat and aim", 2, 5, PredictionKind.SuccessCount, All(Rope), All(Throw))]),
            new("Frog and target", [Content("Float and aim", 2, 5, PredictionKind.SuccessCount, All(Frog), All(Throw))]),
        ];
    }

    /// <summary>The tasks of the unit, from the library.</summary>
    public IReadOnlyList<MovementTask> Tasks => _tasks.Values.ToList();

    /// <summary>The sheets: a name and the contents it had, latest last.</summary>
    public IReadOnlyList<(string Name, IReadOnlyList<SheetContent> Contents)> Sheets { get; }

    /// <summary>A plan with what is true about the unit's tasks.</summary>
    public SimulationPlan WithTruth(SimulationPlan plan) => plan with
    {
        Families = _tasks.ToDictionary(t => t.Value.Id, t => t.Key switch { Rope => "rope", Throw => "throw", _ => "balance" }),
        LevelBents = new Dictionary<Guid, LevelBent>
        {
            // Nobody likes holding the backs of their knees.
            [LevelId(VSit, 2)] = new() { PullLogits = -40 },
            // Semiclassical ladders: hands behind make straight legs easier than the teacher's order says.
            [LevelId(VSit, 3)] = new() { DifficultyLogits = 0.4 },
            [LevelId(VSit, 4)] = new() { DifficultyLogits = -0.5 },
            // As easy as the one before it: it brings nobody in who was not in already.
            [LevelId(Arabesque, 1)] = new() { DifficultyLogits = -2.3 },
            [LevelId(Arabesque, 2)] = new() { DifficultyLogits = -2.2 },
            // A wide target from 5 m is hardly harder than from 3 m, a plate from 7 m is hard for all.
            [LevelId(Throw, 2)] = new() { DifficultyLogits = -1.6 },
            [LevelId(Throw, 5)] = new() { DifficultyLogits = 2.6 },
        },
        CueBents =
        [
            // Level hips cannot be seen from above, and a quiet elbow is the last thing to come.
            new CueBent(_tasks[OneFoot].Id, 3, -2),
            new CueBent(_tasks[Rope].Id, 2, -1.5),
        ],
        Reasons = new Dictionary<NextLevel, IReadOnlyList<string>>
        {
            [NextLevel.Same] = ["I want it calmer first", "almost there", "it feels right"],
            [NextLevel.Harder] = ["it got easy", "I want to see if I can", "all of them worked"],
            [NextLevel.Easier] = ["I kept wobbling", "I want the cues first", "my legs were tired"],
        },
    };

    private Guid LevelId(string file, int number) => _tasks[file].Levels[number - 1].Id;

    private SheetTask All(string file) => SheetTask.Of(_tasks[file], _tasks[file].Levels);

    private SheetTask First(string file, int count) => SheetTask.Of(_tasks[file], _tasks[file].Levels.Take(count).ToList());

    private static SheetContent Content(string title, int sets, int trials, PredictionKind predicts, params SheetTask[] tasks) => new()
    {
        Title = title,
        Tasks = tasks,
        SetCount = sets,
        TrialCount = trials,
        Predicts = predicts,
    };
}
