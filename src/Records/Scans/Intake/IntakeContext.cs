using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Scans.Intake;

/// <summary>What taking in a pile asks the store for, each thing once.</summary>
internal sealed class IntakeContext
{
    // Codes tell most pages; those without are tried as the forms of the same pile, the commonest first.
    private const int MostTried = 3;

    private readonly IStore _store;
    private readonly Dictionary<long, Lesson> _lessons;
    private readonly Dictionary<long, Pupil> _pupils;
    private readonly Dictionary<Guid, LessonRecord> _records = [];
    private readonly Dictionary<Guid, List<Scan>> _scans = [];
    private readonly Dictionary<(Guid, int), SheetVersion?> _versions = [];
    private readonly Dictionary<long, KeptForm?> _forms = [];
    private readonly Dictionary<long, (SheetCode Code, int Count)> _seen = [];

    private IntakeContext(IStore store, School school, IEnumerable<Lesson> lessons, IEnumerable<Pupil> pupils)
    {
        (_store, School) = (store, school);
        // Two ids with one tag are a chance in a million million; the earlier lesson or pupil keeps it, and the other's sheets are refused as unknown.
        _lessons = lessons.Where(l => l.SheetId is not null).GroupBy(l => SheetCode.LessonTagOf(l.Id, l.SheetId!.Value)).ToDictionary(g => g.Key, g => g.First());
        _pupils = pupils.GroupBy(p => SheetCode.TagOf(p.Id)).ToDictionary(g => g.Key, g => g.First());
    }

    public School School { get; }

    /// <summary>Loads what every page needs.</summary>
    /// <exception cref="ArgumentException">The store has no such school.</exception>
    public static async Task<IntakeContext> LoadAsync(IStore store, Guid schoolId, CancellationToken cancel) => new(
        store,
        await store.FindSchoolAsync(schoolId, cancel) ?? throw new ArgumentException($"There is no school {schoolId} in this store.", nameof(schoolId)),
        await store.ListLessonsAsync(schoolId, cancel),
        await store.ListPupilsAsync(schoolId, cancel));

    public Lesson? LessonOf(long tag) => _lessons.GetValueOrDefault(tag);

    public Pupil? PupilOf(long tag) => _pupils.GetValueOrDefault(tag);

    /// <summary>A lesson's record, kept up with what was added meanwhile.</summary>
    /// <exception cref="ArgumentException">The school has no such lesson.</exception>
    public async Task<LessonRecord> RecordAsync(Guid lessonId, CancellationToken cancel)
    {
        if (_records.TryGetValue(lessonId, out var known)) return known;
        var record = await LessonRecord.LoadAsync(_store, School.Id, lessonId, cancel)
            ?? throw new ArgumentException($"The school has no lesson {lessonId}.", nameof(lessonId));
        return _records[lessonId] = record;
    }

    public void Add(Guid lessonId, IReadOnlyList<Entry> entries)
    {
        if (entries.Count > 0) _records[lessonId] = _records[lessonId] with { Entries = [.. _records[lessonId].Entries, .. entries] };
    }

    public async Task<SheetVersion?> VersionAsync(Lesson lesson, int version, CancellationToken cancel)
    {
        if (lesson.SheetId is not { } sheetId) return null;
        if (!_versions.TryGetValue((sheetId, version), out var known))
            _versions[(sheetId, version)] = known = await _store.FindSheetVersionAsync(School.Id, sheetId, version, cancel);
        return known;
    }

    /// <summary>The kept form of a tag; none where it is not here or cannot be read by this program.</summary>
    public async Task<KeptForm?> FormAsync(long layoutTag, CancellationToken cancel)
    {
        if (_forms.TryGetValue(layoutTag, out var known)) return known;
        var kept = await _store.FindLayoutAsync(School.Id, layoutTag, cancel);
        try
        {
            return _forms[layoutTag] = kept?.Form();
        }
        catch (InvalidDataException)
        {
            return _forms[layoutTag] = null;
        }
    }

    /// <summary>The scans of a lesson so far.</summary>
    public async Task<IReadOnlyList<Scan>> ScansAsync(Guid lessonId, CancellationToken cancel)
    {
        if (!_scans.TryGetValue(lessonId, out var known))
            _scans[lessonId] = known = [.. await _store.ListScansAsync(School.Id, lessonId, cancel)];
        return known;
    }

    public void Keep(Scan scan)
    {
        if (scan.LessonId is not { } lessonId || !_scans.TryGetValue(lessonId, out var scans)) return;
        scans.RemoveAll(s => s.Id == scan.Id);
        scans.Add(scan);
    }

    /// <summary>Remembers which form was seen with which code.</summary>
    public void See(SheetCode code) => _seen[code.LayoutTag] = (code, _seen.TryGetValue(code.LayoutTag, out var before) ? before.Count + 1 : 1);

    /// <summary>The last code that was seen on a form of this layout.</summary>
    public SheetCode? CodeSeenOn(long layoutTag) => _seen.TryGetValue(layoutTag, out var seen) ? seen.Code : null;

    /// <summary>The forms to try on a page without a code.</summary>
    /// <param name="lessonId">The lesson all pages should belong to; none where each says its own.</param>
    /// <param name="cancel">Stops the looking.</param>
    public async Task<IReadOnlyList<KnownForm>> KnownFormsAsync(Guid? lessonId, CancellationToken cancel)
    {
        var tags = _seen.Where(s => lessonId is not { } id || LessonOf(s.Value.Code.LessonTag)?.Id == id).OrderByDescending(s => s.Value.Count).Select(s => s.Key).ToList();
        if (tags.Count == 0 && lessonId is { } asked)
            tags = [.. (await ScansAsync(asked, cancel)).Where(s => s is { LayoutTag: not null, IsFaulty: false }).GroupBy(s => s.LayoutTag!.Value).OrderByDescending(g => g.Count()).Select(g => g.Key)];
        var known = new List<KnownForm>();
        foreach (var tag in tags.Take(MostTried))
        {
            if (await FormAsync(tag, cancel) is { } form) known.Add(new KnownForm(tag, form.Layout));
        }
        return known;
    }
}
