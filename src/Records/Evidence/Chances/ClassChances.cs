using System.Collections.Concurrent;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Chances;

/// <summary>What a class's entries so far say about the chance of each pupil at each level, tried or not. For questions and planning; never shown to a pupil, never a rank.</summary>
public sealed partial class ClassChances
{
    private readonly Dictionary<Guid, int> _pupils;
    private readonly Dictionary<Guid, int> _levels;
    private readonly int[] _trialsOfPupil;

    // A sheet being edited asks for the same ones after every tick.
    private readonly ConcurrentDictionary<(int Pupil, int Level, int Lesson), SuccessChance> _found = new();
    private readonly ConcurrentDictionary<(int Pupil, int Lesson), double> _abilities = new();

    private ClassChances(ResponseFit fit, Dictionary<Guid, int> pupils, Dictionary<Guid, int> levels, IReadOnlyList<ResponseTrial> trials)
    {
        (Fit, _pupils, _levels) = (fit, pupils, levels);
        _trialsOfPupil = new int[pupils.Count];
        foreach (var trial in trials) _trialsOfPupil[trial.Pupil] += trial.Trials;
    }

    /// <summary>The fit, with its cautions.</summary>
    public ResponseFit Fit { get; }

    /// <summary>The latest lesson with a trial, from 0 for the first lesson given.</summary>
    public int LatestLesson => Fit.LastLesson;

    /// <summary>All trials it rests on; with 0 it is assumption alone.</summary>
    public int TrialCount => _trialsOfPupil.Sum();

    /// <summary>Fits a class.</summary>
    /// <param name="lessons">Lessons of one class, any order, any number; those without a sheet add nothing.</param>
    /// <param name="planned">Tasks with levels that may not have been tried yet, in the teacher's order; with the sheets' own.</param>
    /// <param name="candidates">Levels that could be added to those tasks.</param>
    /// <param name="pupils">The class's pupils, for one that has no lesson yet; with those of the lessons.</param>
    /// <param name="options">How to fit; none for the usual way.</param>
    /// <param name="work">Threads, progress and cancelling; none for one thread and nobody to tell.</param>
    /// <returns>An answer in any case. Levels come in the teacher's order, which the fit takes as a hypothesis; the first prediction of each pupil is used, later ones are not.</returns>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static ClassChances Of(
        IReadOnlyList<LessonRecord> lessons, IReadOnlyList<SheetTask> planned, IReadOnlyList<CandidateLevel> candidates,
        IReadOnlyList<Pupil>? pupils = null, ResponseOptions? options = null, ResponseWork? work = null)
    {
        var readings = lessons.OrderBy(r => r.Lesson.Date).Select((record, i) => LessonReading.Of(record, i + 1)).ToList();
        return Of(ChanceData.Of(readings, planned, candidates, pupils ?? []), options, work);
    }

    internal static ClassChances Of(ChanceData data, ResponseOptions? options, ResponseWork? work)
    {
        var response = data.ToResponse();
        return new ClassChances(ResponseModel.Fit(response, options, work), data.IndexByPupil, data.IndexByLevel, response.Trials);
    }

    /// <summary>A pupil's chance at a level.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <param name="levelId">The level.</param>
    /// <param name="lesson">Which lesson, from 0; it may lie ahead, and is then less certain.</param>
    /// <returns>None for a pupil or a level that the class does not have.</returns>
    public SuccessChance? Chance(Guid pupilId, Guid levelId, int lesson) =>
        _pupils.TryGetValue(pupilId, out var pupil) && _levels.TryGetValue(levelId, out var level) ? Fit.Chance(pupil, level, lesson) : null;

    /// <summary>A pupil's chances at several levels, in one go.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <param name="levels">The levels, any order.</param>
    /// <param name="lesson">Which lesson, from 0.</param>
    /// <returns>One a level; none for a pupil or a level that the class does not have.</returns>
    public IReadOnlyList<SuccessChance?> Chances(Guid pupilId, IReadOnlyList<Level> levels, int lesson)
    {
        if (!_pupils.TryGetValue(pupilId, out var pupil)) return [.. levels.Select(_ => (SuccessChance?)null)];
        var known = levels.Select((level, at) => (At: at, Index: _levels.GetValueOrDefault(level.Id, -1))).Where(l => l.Index >= 0).ToList();
        var asked = known.Select(l => l.Index).Where(level => !_found.ContainsKey((pupil, level, lesson))).Distinct().ToList();
        if (asked.Count > 0)
        {
            foreach (var (level, chance) in asked.Zip(Fit.Chances(pupil, asked, lesson)))
                if (chance is not null) _found[(pupil, level, lesson)] = chance;
        }
        var chances = new SuccessChance?[levels.Count];
        foreach (var (at, level) in known) chances[at] = _found.GetValueOrDefault((pupil, level, lesson));
        return chances;
    }

    /// <summary>How much harder one level is than another, over all pupils.</summary>
    /// <param name="harderId">A level.</param>
    /// <param name="easierId">Another.</param>
    /// <returns>None for a level that the class does not have.</returns>
    public Estimate? Contrast(Guid harderId, Guid easierId) =>
        _levels.TryGetValue(harderId, out var harder) && _levels.TryGetValue(easierId, out var easier) ? Fit.Contrast(harder, easier) : null;

    /// <summary>How many trials of a pupil it rests on, over all tasks; 0 for one the class does not have.</summary>
    /// <param name="pupilId">The pupil.</param>
    public int TrialCountOf(Guid pupilId) => _pupils.TryGetValue(pupilId, out var pupil) ? _trialsOfPupil[pupil] : 0;

    /// <summary>How uncertain a pupil's own part is, in logits; that of nobody known where the class has no such pupil.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <param name="lesson">Which lesson, from 0.</param>
    public double AbilitySdLogits(Guid pupilId, int lesson) =>
        _pupils.TryGetValue(pupilId, out var pupil) ? _abilities.GetOrAdd((pupil, lesson), _ => Fit.Ability(pupil, lesson).SdLogits) : Fit.AbilitySpread.MedianLogits;
}
