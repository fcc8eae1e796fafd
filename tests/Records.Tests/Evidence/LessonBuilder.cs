using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Evidence;

/// <summary>A small lesson written by hand: pupils by name, levels and cues by number, tries as on paper.</summary>
internal sealed class LessonBuilder
{
    public static readonly Guid SchoolId = Id(1, 1);
    public static readonly Guid ClassId = Id(2, 1);

    private readonly Lesson _lesson;
    private readonly List<Pupil> _pupils = [];
    private readonly List<Restriction> _restrictions = [];
    private readonly List<SheetTask> _tasks = [];
    private readonly List<Entry> _entries = [];

    public LessonBuilder(int number = 1, int setCount = 3, int trialCount = 5, SafetyPolicy? policy = null)
    {
        _lesson = new Lesson
        {
            SchoolId = SchoolId, Id = Id(3, number), ClassId = ClassId, Date = new DateOnly(2027, 3, 1).AddDays(7 * number),
            Title = $"Lesson {number}", SheetId = Id(4, 1), SheetVersion = number,
        };
        (SetCount, TrialCount, Policy) = (setCount, trialCount, policy ?? new SafetyPolicy());
    }

    public int SetCount { get; }

    public int TrialCount { get; }

    public SafetyPolicy Policy { get; }

    public IReadOnlyList<Entry> Entries => _entries;

    public Guid LessonId => _lesson.Id;

    public static Guid Id(int kind, int number) => new(kind, (short)number, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 1);

    public static Guid TaskId(int task) => Id(5, task);

    public static Guid LevelId(int task, int level) => Id(6, 100 * task + level);

    public static Guid PupilId(string name) => Id(7, name.Aggregate(0, (sum, c) => (sum * 31 + c) % 30000));

    public LessonBuilder Pupils(params string[] names)
    {
        _pupils.AddRange(names.Select(n => new Pupil { SchoolId = SchoolId, Id = PupilId(n), Code = n, DisplayName = n }));
        return this;
    }

    /// <summary>A task of holds; a level is written by its own number, its dose in seconds and, if any, its demand.</summary>
    public LessonBuilder Task(int task, string name, string[] cues, params (int Number, decimal HoldS, BodyDemand? Demand)[] levels)
    {
        _tasks.Add(new SheetTask
        {
            TaskId = TaskId(task), Name = name, Cues = cues,
            Levels = levels.Select(l => new Level
            {
                Id = LevelId(task, l.Number), Name = $"way {l.Number}", Dose = new Dose(DoseKind.HoldS, l.HoldS),
                Demands = l.Demand is { } demand ? [demand] : [],
            }).ToList(),
        });
        return this;
    }

    public LessonBuilder Restrict(string pupil, BodyDemand without)
    {
        _restrictions.Add(new Restriction { SchoolId = SchoolId, Id = Id(8, _restrictions.Count + 1), PupilId = PupilId(pupil), Without = without });
        return this;
    }

    /// <summary>One set as a pupil writes it. Tries: 1 held, 0 not, "4.2s" timed and held where it reached the dose. Cues: those ticked.</summary>
    public LessonBuilder Set(
        string pupil, int set, int? level = null, int? predicted = null, double? predictedS = null, string tries = "",
        string? cues = null, NextLevel? decision = null, int task = 1)
    {
        if (level is { } chosen) Add(pupil, task, set, new Choice(LevelId(task, chosen)));
        if (predicted is not null || predictedS is not null) Add(pupil, task, set, new Prediction(predicted, predictedS));
        var dose = _tasks.Single(t => t.TaskId == TaskId(task)).Levels.FirstOrDefault(l => l.Id == LevelId(task, level ?? 0))?.Dose.Amount;
        var number = 0;
        foreach (var written in tries.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            Add(pupil, task, set, TrialOf(written, dose), ++number);
        if (cues is not null)
        {
            var ticked = cues.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(c => int.Parse(c, CultureInfo.InvariantCulture)).ToList();
            foreach (var cue in ticked) Add(pupil, task, set, new CueTick(cue, true));
            if (ticked.Count == 0) Add(pupil, task, set, new CueTick(1, false));
        }
        if (decision is { } next) Add(pupil, task, set, new Decision(next));
        return this;
    }

    public LessonBuilder Absent(string pupil)
    {
        Add(pupil, null, null, new Presence(false));
        return this;
    }

    public Entry Add(string? pupil, int? task, int? set, EntryFact fact, int? trial = null, Guid? supersedes = null)
    {
        var number = _entries.Count + 1;
        var entry = new Entry
        {
            SchoolId = SchoolId, Id = new Guid(9, (short)number, _lesson.Id.ToByteArray()[4], 0x80, 0, 0, 0, 0, 0, 0, 1),
            LessonId = _lesson.Id, PupilId = pupil is null ? null : PupilId(pupil),
            TaskId = task is { } t ? TaskId(t) : null, SetNumber = set, TrialNumber = trial, Fact = fact,
            Source = EntrySource.Desk, DeviceId = "desk", DeviceSequence = number, SupersedesId = supersedes,
            MadeAt = new DateTimeOffset(2027, 3, 1, 9, 0, 0, TimeSpan.Zero).AddSeconds(number),
        };
        _entries.Add(entry);
        return entry;
    }

    public LessonRecord Record(bool withSheet = true) => new()
    {
        School = new School { Id = SchoolId, Name = "Hillside", Policy = Policy },
        Class = new SchoolClass { SchoolId = SchoolId, Id = ClassId, Name = "7B" },
        Lesson = _lesson,
        Sheet = withSheet
            ? new SheetVersion
            {
                SchoolId = SchoolId, SheetId = Id(4, 1), Version = 1, FrozenAt = default,
                Content = new SheetContent { Title = "Balance", Tasks = _tasks.ToList(), SetCount = SetCount, TrialCount = TrialCount },
            }
            : null,
        Pupils = _pupils.ToList(),
        Restrictions = _restrictions.ToList(),
        Entries = _entries.ToList(),
    };

    private static Trial TrialOf(string written, decimal? dose)
    {
        if (!written.EndsWith('s')) return new Trial(written == "1");
        var held = decimal.Parse(written[..^1], CultureInfo.InvariantCulture);
        return new Trial(held >= dose, (double)held);
    }
}
