using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Evidence.Chances;

/// <summary>A class's lessons as the response model takes them, pupil by pupil, so that what one pupil wrote in one lesson can be replaced.</summary>
internal sealed class ChanceData
{
    private readonly ChanceLevels _levels;
    private readonly SortedDictionary<Guid, PupilTrials>[] _lessons;

    private ChanceData(ChanceLevels levels, Dictionary<Guid, int> indexByPupil, int lessons)
    {
        (_levels, IndexByPupil) = (levels, indexByPupil);
        // By pupil id, as a reading orders its sets: the order of the trials, and so the last digit of an answer, does not hang on who wrote first.
        _lessons = [.. Enumerable.Range(0, lessons).Select(_ => new SortedDictionary<Guid, PupilTrials>())];
    }

    public Dictionary<Guid, int> IndexByPupil { get; }

    public Dictionary<Guid, int> IndexByLevel => _levels.IndexById;

    /// <summary>The data of readings that stand earliest first, numbered from 1.</summary>
    public static ChanceData Of(
        IReadOnlyList<LessonReading> readings, IReadOnlyList<SheetTask> planned, IReadOnlyList<CandidateLevel> candidates, IEnumerable<Pupil> pupils)
    {
        var levels = ChanceLevels.Of(SheetMerge.Of([.. readings.Select(r => r.SheetTasks), planned]), candidates);
        var ids = readings.SelectMany(r => r.Record.Pupils).Concat(pupils).Select(p => p.Id).Concat(readings.SelectMany(r => r.Sets.Select(s => s.PupilId)));
        var data = new ChanceData(levels, ids.Distinct().Order().Select((id, index) => (id, index)).ToDictionary(x => x.id, x => x.index), readings.Count);
        foreach (var reading in readings)
            foreach (var own in reading.Sets.GroupBy(s => s.PupilId)) data.Replace(reading.LessonNumber, own.Key, own);
        return data;
    }

    /// <summary>Puts what a pupil wrote in a lesson in the place of what stood there.</summary>
    /// <param name="lessonNumber">From 1.</param>
    /// <param name="pupilId">One of the pupils.</param>
    /// <param name="sets">The pupil's sets of that lesson; none takes everything out.</param>
    /// <returns>Whether the model sees a difference.</returns>
    public bool Replace(int lessonNumber, Guid pupilId, IEnumerable<SetEvidence> sets)
    {
        var (lesson, now) = (_lessons[lessonNumber - 1], PupilTrials.Of(sets, IndexByPupil[pupilId], _levels));
        var isEmpty = now is { Trials.Count: 0, HasPredicted: false };
        if (lesson.TryGetValue(pupilId, out var before) ? now.SaysSameAs(before) : isEmpty) return false;
        if (isEmpty) lesson.Remove(pupilId);
        else lesson[pupilId] = now;
        return true;
    }

    public ResponseData ToResponse()
    {
        var first = new Dictionary<Guid, FirstPrediction?>();
        foreach (var (pupilId, own) in _lessons.SelectMany(l => l).Where(p => p.Value.HasPredicted)) first.TryAdd(pupilId, own.Predicted);
        return new ResponseData(
            [.. IndexByPupil.OrderBy(p => p.Value).Select(p => new ResponsePupil(first.GetValueOrDefault(p.Key)))],
            _levels.Levels,
            [.. _lessons.SelectMany(l => l.Values).SelectMany(p => p.Trials)]);
    }
}
