using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Live;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>What could be asked in one lesson, kept up to date pupil by pupil. For one caller at a time.</summary>
internal sealed class LiveQuestions(IStore store)
{
    private readonly SortedDictionary<Guid, IReadOnlyList<Conference>> _byPupil = [];
    private LiveClass? _live;
    private LessonRecord? _of;

    /// <summary>Everything that could be asked, safety first and then by name; nobody stands before another for how well they do.</summary>
    public IReadOnlyList<Conference> All { get; private set; } = [];

    /// <summary>Starts anew, as after a pupil was erased.</summary>
    public void Forget() => _live = null;

    /// <summary>Goes on with entries.</summary>
    /// <param name="record">The lesson without entries; where it is another than before, all is read anew.</param>
    /// <param name="log">Every entry so far.</param>
    /// <param name="fresh">Those of them that are new; none to look at all of them.</param>
    /// <param name="cancel">Stops the loading.</param>
    /// <returns>Whether anything else could be asked now.</returns>
    public async Task<bool> FollowAsync(LessonRecord record, IReadOnlyList<Entry> log, IReadOnlyList<Entry>? fresh, CancellationToken cancel)
    {
        IEnumerable<Guid> touched;
        if (_live is null || !ReferenceEquals(_of, record))
        {
            var others = await LessonRecord.LoadClassAsync(store, record.School.Id, record.Class.Id, cancel);
            _live = LiveClass.Unfitted(record with { Entries = log }, others);
            _of = record;
            _byPupil.Clear();
            touched = record.Pupils.Select(p => p.Id);
        }
        else
        {
            touched = _live.Take(fresh ?? log);
        }
        var before = All;
        foreach (var pupil in touched) _byPupil[pupil] = _live.QuestionsOf(pupil);
        All = [.. _byPupil.Values.SelectMany(q => q).OrderByDescending(q => q.IsSafety).ThenBy(q => q.Label, StringComparer.InvariantCultureIgnoreCase).ThenBy(q => q.PupilId)];
        return !before.Select(Text).SequenceEqual(All.Select(Text));
    }

    private static (Guid, string, string) Text(Conference talk) =>
        (talk.PupilId, talk.Question(System.Globalization.CultureInfo.InvariantCulture), talk.Reason(System.Globalization.CultureInfo.InvariantCulture));
}
