using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Records.Scans.Intake;

/// <summary>What waits for a person, and what the person says to it. Each answer is durable before it returns; a scan with nothing left to ask is done.</summary>
/// <param name="store">Where scans are.</param>
/// <param name="schoolId">The school.</param>
/// <param name="clock">Dates answers and entries.</param>
public sealed class ScanReview(IStore store, Guid schoolId, TimeProvider clock)
{
    /// <summary>The scans that wait, the earliest read first.</summary>
    /// <param name="lessonId">The lesson; none for all of the school.</param>
    /// <param name="cancel">Stops the looking.</param>
    public async Task<IReadOnlyList<Scan>> WaitingAsync(Guid? lessonId = null, CancellationToken cancel = default) =>
        [.. (await store.ListScansAsync(schoolId, lessonId, cancel)).Where(s => s.State == ScanState.Waiting)];

    /// <summary>A picture of a scan: an item's box, words by hand, or, while it waits, the page (<see cref="ScanPicture.Photo"/>).</summary>
    /// <param name="scanId">The scan.</param>
    /// <param name="pictureKey">Which picture.</param>
    /// <param name="cancel">Stops the looking.</param>
    /// <returns>None where there is no such picture.</returns>
    public async Task<byte[]?> PictureAsync(Guid scanId, string pictureKey, CancellationToken cancel = default)
    {
        if (await store.FindScanPictureAsync(schoolId, scanId, pictureKey, cancel) is { } picture) return picture;
        // An answer that was taken back asks again: its box has moved beside the record.
        return await store.FindScanAsync(schoolId, scanId, cancel) is { LessonId: { } lessonId, PupilId: { } pupilId }
            ? await store.FindPictureAsync(schoolId, new PictureKey(lessonId, pupilId, pictureKey), cancel)
            : null;
    }

    /// <summary>Says what an item is.</summary>
    /// <param name="scanId">The scan.</param>
    /// <param name="itemKey">The item.</param>
    /// <param name="value">One of its <see cref="ScanItem.Choices"/> or its <see cref="ScanItem.Before"/>; seconds from 0 to 600; none for "nothing there".</param>
    /// <param name="cancel">Stops before anything is stored.</param>
    /// <exception cref="ArgumentException">No such scan or item; a value the item cannot have.</exception>
    public async Task<ReviewedScan> AnswerAsync(Guid scanId, string itemKey, decimal? value, CancellationToken cancel = default)
    {
        var scan = await FindAsync(scanId, cancel);
        var item = scan.Items.FirstOrDefault(i => i.Key == itemKey) ?? throw new ArgumentException($"The page has no item {itemKey}.", nameof(itemKey));
        if (value is { } said && !CanBe(item, said)) throw new ArgumentException($"{itemKey} cannot be {said}: {string.Join(", ", item.Choices)} or nothing.", nameof(value));
        var answered = item with { Answer = new ScanAnswer(value, clock.GetUtcNow()) };
        // Seconds belong to their trial, and it is the trial's entry that they correct.
        var key = item.Question.Kind == SheetFieldKind.Seconds ? (item.Question with { Kind = SheetFieldKind.Held }).Key : itemKey;
        return await SaveAsync(scan with { Items = [.. scan.Items.Select(i => i.Key == itemKey ? answered : i)] }, key, cancel, answered: itemKey);
    }

    /// <summary>Takes an answer back, and the entry it made; what that had corrected holds again, and the item waits.</summary>
    /// <param name="scanId">The scan.</param>
    /// <param name="itemKey">The item.</param>
    /// <param name="cancel">Stops before anything is stored.</param>
    /// <exception cref="ArgumentException">No such scan.</exception>
    public async Task<ReviewedScan> TakeBackAsync(Guid scanId, string itemKey, CancellationToken cancel = default)
    {
        var scan = await FindAsync(scanId, cancel);
        var unanswered = scan with { Items = [.. scan.Items.Select(i => i.Key == itemKey ? i with { Answer = null } : i)] };
        var taken = scan.Items.FirstOrDefault(i => i.Key == itemKey)?.Answer is { } answer ? await WithdrawnAsync(scan, answer, cancel) : [];
        if (taken.Count > 0) await store.AppendEntriesAsync(schoolId, taken, cancel);
        var saved = await SaveAsync(unanswered, null, cancel, askedAgain: itemKey);
        return saved with { Added = [.. taken, .. saved.Added] };
    }

    /// <summary>Says whose sheet it is: one without a name, without a readable code, or of a pupil who is in another class.</summary>
    /// <param name="scanId">The scan.</param>
    /// <param name="pupilId">A pupil of the lesson's class.</param>
    /// <param name="cancel">Stops before anything is stored.</param>
    /// <exception cref="ArgumentException">No such scan, or one whose code names a pupil of the class; a pupil who is not in the class.</exception>
    public async Task<ReviewedScan> AssignAsync(Guid scanId, Guid pupilId, CancellationToken cancel = default)
    {
        var scan = await FindAsync(scanId, cancel);
        if (scan.LessonId is not { } lessonId || await LessonRecord.LoadAsync(store, schoolId, lessonId, cancel) is not { } record)
            throw new ArgumentException("The page belongs to no lesson that is here.", nameof(scanId));
        if (scan.IsObservation) throw new ArgumentException("An observation sheet is about several pupils.", nameof(scanId));
        if (scan.PupilId is { } named && scan.CodeFound == CodeFound.Read && scan.SpareNumber is null && record.Pupils.Any(p => p.Id == named))
            throw new ArgumentException("The page's code says whose it is.", nameof(scanId));
        if (record.Pupils.All(p => p.Id != pupilId)) throw new ArgumentException($"The pupil {pupilId} is not in the class {record.Class.Name}.", nameof(pupilId));
        return await SaveAsync(scan with { PupilId = pupilId }, null, cancel);
    }

    /// <summary>Says that the marks are to be taken although the pupil is marked absent; the pupil counts as present from then on.</summary>
    /// <param name="scanId">The scan.</param>
    /// <param name="cancel">Stops before anything is stored.</param>
    /// <exception cref="ArgumentException">No such scan.</exception>
    public async Task<ReviewedScan> ConfirmAsync(Guid scanId, CancellationToken cancel = default) =>
        await SaveAsync(await FindAsync(scanId, cancel) with { IsConfirmed = true }, null, cancel);

    /// <summary>Throws the page away: its pictures go, entries it made stay, and reading the same picture again changes nothing.</summary>
    /// <param name="scanId">The scan.</param>
    /// <param name="cancel">Stops before anything is stored.</param>
    /// <exception cref="ArgumentException">No such scan.</exception>
    public async Task<ReviewedScan> DiscardAsync(Guid scanId, CancellationToken cancel = default)
    {
        var scan = await FindAsync(scanId, cancel) with { State = ScanState.Discarded };
        await store.SaveScanAsync(new ScanSave(scan) { ForgetsPictures = true }, cancel);
        return new ReviewedScan(scan, [], []);
    }

    // With a ticked cue go those left open beside it: all that the answer made. What was typed stays.
    private async Task<List<Entry>> WithdrawnAsync(Scan scan, ScanAnswer answer, CancellationToken cancel)
    {
        var taken = new List<Entry>();
        if (scan.LessonId is not { } lessonId || await LessonRecord.LoadAsync(store, schoolId, lessonId, cancel) is not { } record) return taken;
        var recorder = new Recorder(schoolId, lessonId, EntrySource.Paper, ScanPlan.DeviceId, clock, record.Entries);
        foreach (var held in EntryLog.Current(record.Entries).Where(e => answer.EntryIds.Contains(e.Id)))
        {
            var corrected = record.Entries.FirstOrDefault(e => e.Id == held.SupersedesId);
            var entry = corrected is { Fact: not Withdrawal }
                ? recorder.Put(held.PupilId, held.TaskId, held.SetNumber, held.TrialNumber, corrected.Fact)
                : recorder.TakeBack(EntrySlot.Of(held));
            if (entry is not null) taken.Add(entry);
        }
        return taken;
    }

    private async Task<ReviewedScan> SaveAsync(Scan scan, string? answeredNow, CancellationToken cancel, string? askedAgain = null, string? answered = null)
    {
        var plan = new ScanPlan(scan, [], []);
        var school = await store.FindSchoolAsync(schoolId, cancel) ?? throw new ArgumentException($"There is no school {schoolId} in this store.");
        if (scan.LessonId is { } lessonId && await LessonRecord.LoadAsync(store, schoolId, lessonId, cancel) is { } record)
            plan = ScanPlan.Of(scan, record, await PrintedAsync(scan, record, cancel), clock, answeredNow, askedAgain);
        if (answered is not null) plan = plan with { Scan = plan.Scan with { Items = [.. plan.Scan.Items.Select(i => i.Key == answered ? Made(i, plan.Entries) : i)] } };
        if (plan.Entries.Count > 0) await store.AppendEntriesAsync(schoolId, plan.Entries, cancel);
        var isOpen = plan.Scan.State == ScanState.Waiting;
        var pictures = isOpen ? [] : await store.ListScanPicturesAsync(schoolId, scan.Id, cancel);
        await store.SaveScanAsync(isOpen ? new ScanSave(plan.Scan) : ScanSaves.Of(plan.Scan, pictures, school.Pictures), cancel);
        return new ReviewedScan(plan.Scan, plan.Entries, plan.Findings);
    }

    private static ScanItem Made(ScanItem item, IReadOnlyList<Entry> entries) =>
        item.Answer is { } answer ? item with { Answer = answer with { EntryIds = [.. entries.Select(e => e.Id)] } } : item;

    private async Task<Scan> FindAsync(Guid scanId, CancellationToken cancel) =>
        await store.FindScanAsync(schoolId, scanId, cancel) ?? throw new ArgumentException($"There is no scan {scanId}.", nameof(scanId));

    private async Task<Sheets.SheetVersion?> PrintedAsync(Scan scan, LessonRecord record, CancellationToken cancel) =>
        record.Lesson.SheetId is { } sheetId && scan.SheetVersion is { } version ? await store.FindSheetVersionAsync(schoolId, sheetId, version, cancel) : null;

    private static bool CanBe(ScanItem item, decimal value) => item.Question.Kind == SheetFieldKind.Seconds
        ? FactCheck.IsHold((double)value)
        : item.Choices.Contains(value) || item.Before == value;
}
