using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Evidence.Live;

/// <summary>A class in a lesson, entry by entry: what is believed of each pupil now, and what could be asked. For the teacher; never shown to a pupil, never a rank.</summary>
/// <remarks>For one caller at a time; what it hands out may be kept and asked from several threads.</remarks>
public sealed class LiveClass
{
    private readonly LessonRecord _lesson;
    private readonly List<LessonReading> _readings;
    private readonly ILookup<Guid, SetEvidence>[] _setsByPupil;
    private readonly HashSet<Guid> _expected;
    private readonly int _at;
    private readonly Dictionary<Guid, LessonReading> _own = [];
    private LiveLog _log;
    private ChanceData _data;
    private ClassChances? _chances;
    private ResponseFit? _near;
    private ResponseOptions? _quick;

    private LiveClass(LessonRecord lesson, IReadOnlyList<LessonRecord> others)
    {
        _lesson = lesson with { Entries = [] };
        _log = new(lesson.Lesson.Id);
        _readings = [.. others.Where(r => r.Lesson.Id != lesson.Lesson.Id).Append(_lesson).OrderBy(r => r.Lesson.Date).Select((record, i) => LessonReading.Of(record, i + 1))];
        _at = _readings.FindIndex(r => r.LessonId == lesson.Lesson.Id);
        _setsByPupil = [.. _readings.Select(r => r.Sets.ToLookup(s => s.PupilId))];
        _data = ChanceData.Of(_readings, [], [], []);
        _expected = [.. _data.IndexByPupil.Keys];
    }

    /// <summary>How many entries of the lesson were taken; one that came twice counts once.</summary>
    public int EntryCount => _log.Count;

    /// <summary>The lesson to ask chances for, from 0 for the earliest: this one, or the latest with a trial where this one is typed in late.</summary>
    public int Now => Math.Max(_at, Chances.LatestLesson);

    /// <summary>What is believed of the class after the entries taken so far. Worked out when it is asked for, from where the last answer was.</summary>
    public ClassChances Chances
    {
        get
        {
            if (_chances is not null) return _chances;
            _quick ??= FitOthers(null);
            _chances = ClassChances.Of(_data, _quick, new ResponseWork { Near = _near });
            _near = _chances.Fit;
            return _chances;
        }
    }

    /// <summary>A class in a lesson, with the entries its record holds.</summary>
    /// <param name="lesson">The lesson that goes on.</param>
    /// <param name="others">The class's other lessons, any order; this one among them is passed over.</param>
    /// <param name="work">Threads, progress and cancelling of the one full fit, that of the other lessons; none for one thread and nobody to tell.</param>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static LiveClass Of(LessonRecord lesson, IReadOnlyList<LessonRecord> others, ResponseWork? work = null)
    {
        var live = new LiveClass(lesson, others);
        live._quick = live.FitOthers(work);
        live.Take(lesson.Entries);
        return live;
    }

    /// <summary>The same class where what could be asked is wanted more than chances: the fit of the other lessons waits until a chance is asked for.</summary>
    /// <param name="lesson">The lesson that goes on.</param>
    /// <param name="others">The class's other lessons, any order; this one among them is passed over.</param>
    public static LiveClass Unfitted(LessonRecord lesson, IReadOnlyList<LessonRecord> others)
    {
        var live = new LiveClass(lesson, others);
        live.Take(lesson.Entries);
        return live;
    }

    /// <summary>Takes entries as they arrive.</summary>
    /// <param name="entries">Any number, any order, corrections before what they correct included; those already here change nothing.</param>
    /// <returns>The pupils of whom something else is written now.</returns>
    public IReadOnlySet<Guid> Take(IEnumerable<Entry> entries)
    {
        var touched = new HashSet<Guid>();
        foreach (var entry in entries) _log.Take(entry, touched);
        foreach (var pupil in touched) Read(pupil);
        return touched;
    }

    /// <summary>Goes on from a whole log: takes what is new in it, and forgets what is no longer there, as after a pupil was erased.</summary>
    /// <param name="log">Every entry of the lesson.</param>
    public void Follow(IReadOnlyList<Entry> log)
    {
        if (log.DistinctBy(e => e.Id).Count(e => _log.Holds(e.Id)) < _log.Count)
        {
            (_log, _chances, _near) = (new(_lesson.Lesson.Id), null, null);
            _own.Clear();
            _data = ChanceData.Of(_readings, [], [], []);
        }
        Take(log);
    }

    /// <summary>Fits the class in full and answers with that until the next entry; quick answers then go on from its spreads.</summary>
    /// <param name="work">Threads, progress and cancelling; none for one thread and nobody to tell.</param>
    /// <remarks>
    /// After an entry the two spreads, of abilities and of levels, are held where the last full fit left them, at first that of the other lessons; only
    /// in a class's first lesson are they found anew. The full fit averages over them, so its ranges are a little wider where little was tried, and it
    /// reads the levels in a second way too. In the demo classes no chance differs by more than .02 and no end of a range by more than .04: a test holds
    /// both to it.
    /// </remarks>
    /// <exception cref="OperationCanceledException">The work was cancelled; the quick answer stays.</exception>
    public ClassChances Settle(ResponseWork? work = null)
    {
        var full = ClassChances.Of(_data, null, work);
        _quick = QuickAfter(full);
        return _chances = full;
    }

    /// <summary>What in a pupil's entries of this lesson does not fit together. It says so and blocks nothing.</summary>
    /// <param name="pupilId">The pupil.</param>
    public IReadOnlyList<EvidenceFlag> FlagsOf(Guid pupilId) =>
        PupilOf(pupilId) is { } pupil && _own.TryGetValue(pupilId, out var own)
            ? [.. Gathered(pupil, own).Pupils[0].Flags.Where(f => f.LessonId == _lesson.Lesson.Id)]
            : [];

    /// <summary>What a pupil could be asked about this lesson, the most pressing first.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <returns>At most two. A set that is still being written opens no question, unless it is one of safety.</returns>
    public IReadOnlyList<Conference> QuestionsOf(Guid pupilId)
    {
        if (PupilOf(pupilId) is not { } pupil || !_own.TryGetValue(pupilId, out var own) || own.Sets.Count == 0) return [];
        var ended = own.Sets.Where(s => s.IsComplete || s.Decision is not null || own.Sets.Any(o => o.TaskId == s.TaskId && o.SetNumber > s.SetNumber)).ToList();
        if (ended.Count == own.Sets.Count) return Gathered(pupil, own).Conferences;
        var safety = Gathered(pupil, own).Conferences.Where(c => c.IsSafety);
        return [.. safety.Concat(ended.Count == 0 ? [] : Gathered(pupil, own with { Sets = ended }).Conferences.Where(c => !c.IsSafety)).Take(2)];
    }

    /// <summary>A pupil's sets of this lesson, in order of task and set.</summary>
    /// <param name="pupilId">The pupil.</param>
    public IReadOnlyList<SetEvidence> SetsOf(Guid pupilId) => _own.TryGetValue(pupilId, out var own) ? own.Sets : [];

    // Of everything that is read, an entry can change only its pupil's part.
    private void Read(Guid pupilId)
    {
        var reading = LessonReading.Of(_lesson with { Entries = _log.Of(pupilId) }, _at + 1);
        // A correction by an entry about somebody else is there to take effect, not to be counted here.
        _own[pupilId] = reading = reading with { Sets = [.. reading.Sets.Where(s => s.PupilId == pupilId)] };
        if (!_expected.Contains(pupilId))
        {
            // Somebody who is not in the class, as one who has left it: the pupils are counted anew.
            var all = _readings[_at] with { Sets = [.. _own.OrderBy(o => o.Key).SelectMany(o => o.Value.Sets)] };
            _data = ChanceData.Of([.. _readings.Select((r, i) => i == _at ? all : r)], [], [], []);
            _chances = null;
        }
        else if (_data.Replace(_at + 1, pupilId, reading.Sets))
        {
            _chances = null;
        }
    }

    // The readings hold nothing of this lesson: what was taken of it since is in the data only.
    private ResponseOptions FitOthers(ResponseWork? work) => QuickAfter(ClassChances.Of(ChanceData.Of(_readings, [], [], []), null, work));

    // Where no trial stands behind them the spreads are found anew each time: one lesson's trials are few enough for that.
    private static ResponseOptions QuickAfter(ClassChances full) => new()
    {
        AbilitySdLogits = full.TrialCount > 0 ? full.Fit.AbilitySpread.MedianLogits : null,
        ResidualSdLogits = full.TrialCount > 0 ? full.Fit.ResidualSpread!.Value.MedianLogits : null,
        GridPupilCount = 0,
        // One step more than usual: where a search begins, and so the order of entries, must not show in the answer.
        ToleranceSd = 1e-7,
        ChoicePupilCount = 0,
    };

    private Pupil? PupilOf(Guid pupilId) => _lesson.Pupils.FirstOrDefault(p => p.Id == pupilId);

    // The same rules as for a whole class, on the readings of one pupil up to this lesson.
    private Gathering Gathered(Pupil pupil, LessonReading own) => Gathering.Of(
        [.. _readings.Take(_at).Select((r, i) => Alone(r, pupil) with { Sets = [.. _setsByPupil[i][pupil.Id]] }), Alone(own, pupil)]);

    private static LessonReading Alone(LessonReading reading, Pupil pupil) => reading with { Record = reading.Record with { Pupils = [pupil] } };
}
