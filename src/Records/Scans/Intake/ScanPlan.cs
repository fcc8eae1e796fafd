using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Scans.Intake;

/// <summary>What a scan adds to a lesson, and what of it a person has to look at first.</summary>
/// <param name="Scan">The scan, with the doubts that what is on record raises, and its state.</param>
/// <param name="Entries">To append: certain or reviewed values only. Empty where the page is held back or says nothing new.</param>
/// <param name="Findings">What to point out about the entries, as everywhere: a level that is not offered to this pupil, for one.</param>
public sealed record ScanPlan(Scan Scan, IReadOnlyList<Entry> Entries, IReadOnlyList<Finding> Findings)
{
    /// <summary>The device's name of entries from paper.</summary>
    public const string DeviceId = "paper";

    /// <summary>Looks at a scan beside the lesson's record.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="record">Its lesson, with every entry so far.</param>
    /// <param name="printed">The sheet's version it was printed from.</param>
    /// <param name="clock">Dates the entries.</param>
    /// <param name="answeredNow">The item a person has just answered, which may correct what was entered before; none for any other reason to look.</param>
    /// <param name="askedAgain">The item whose answer a person has just taken back, which waits whatever the record says; none for any other reason to look.</param>
    /// <remarks>
    /// What was entered before is never overwritten by a mark: the item waits, and only a person's answer corrects. A mark that was taken from paper before is
    /// not taken again, even where somebody has corrected it since; so reading a pile twice adds nothing.
    /// </remarks>
    public static ScanPlan Of(Scan scan, LessonRecord record, SheetVersion? printed, TimeProvider clock, string? answeredNow = null, string? askedAgain = null)
    {
        scan = Remarked(scan with { Items = [.. scan.Items.Select(Undoubted)] }, record, printed);
        if (scan.IsHeld || printed is null || record.Sheet is not { } sheet) return new ScanPlan(Closed(scan), [], []);

        var (facts, notOnSheet) = ScanFacts.Of(scan, printed.Content, sheet.Content);
        var doubts = notOnSheet.ToDictionary(key => key, _ => (Doubt: ScanDoubt.NotOnSheet, Before: (decimal?)null));
        var lookup = new EntryLookup(record);
        var recorder = new Recorder(record.School.Id, record.Lesson.Id, EntrySource.Paper, DeviceId, clock, record.Entries);
        var taken = record.Entries.Where(e => e.Source == EntrySource.Paper).ToLookup(EntrySlot.Of, e => e.Fact);
        var (entries, findings) = (new List<Entry>(), new List<Finding>());
        if (scan is { IsConfirmed: true, PupilId: { } pupilId } && IsAbsent(record, pupilId)) Add(recorder.Put(pupilId, null, null, null, new Presence(true)));
        foreach (var fact in facts)
        {
            var slot = SlotOf(fact, record);
            var held = recorder.Holds(slot);
            if (fact.ItemKey == askedAgain)
            {
                doubts[fact.ItemKey] = (ScanDoubt.Differs, held is null ? null : ScanFacts.ValueOf(held, lookup.TaskOf(fact.TaskId)));
                continue;
            }
            if (held is not null && ScanFacts.IsSame(held, fact.Fact)) continue;
            var isNow = fact.ItemKey == answeredNow;
            if (!isNow && taken[slot].Any(f => ScanFacts.IsSame(f, fact.Fact))) continue;
            var said = lookup.CheckFact(
                fact.PupilId, fact.TaskId, fact.SetNumber, fact.TrialNumber, fact.Fact, PlaceOf(fact, record, lookup), isFromFile: false);
            if (said.Any(f => f.IsRefused)) doubts[fact.ItemKey] = (ScanDoubt.NotOnSheet, null);
            else if (held is not null && !isNow) doubts[fact.ItemKey] = (ScanDoubt.Differs, ScanFacts.ValueOf(held, lookup.TaskOf(fact.TaskId)));
            else
            {
                findings.AddRange(said);
                Add(recorder.Put(fact.PupilId, fact.TaskId, fact.SetNumber, fact.TrialNumber, fact.Fact));
            }
        }
        scan = scan with { Items = [.. scan.Items.Select(item => Doubted(item, doubts))] };
        return new ScanPlan(Closed(scan), entries, findings);

        void Add(Entry? entry)
        {
            if (entry is not null) entries.Add(entry);
        }
    }

    // What the record says may have changed since: those doubts are raised anew.
    private static ScanItem Undoubted(ScanItem item) => item is { Doubt: ScanDoubt.Differs or ScanDoubt.NotOnSheet, Answer: null, Value: not null }
        ? item with { Doubt = ScanDoubt.None, Before = null }
        : item;

    private static ScanItem Doubted(ScanItem item, Dictionary<string, (ScanDoubt Doubt, decimal? Before)> doubts) =>
        doubts.TryGetValue(item.Key, out var doubt)
            ? item with { Value = item.Settled ?? item.Value, Answer = null, Doubt = doubt.Doubt, Before = doubt.Before }
            : item;

    // What depends on the lesson's record is said anew each time: a pupil may have come into the class meanwhile.
    private static Scan Remarked(Scan scan, LessonRecord record, SheetVersion? printed)
    {
        var remarks = scan.Remarks
            .Where(r => r.Kind is not (ScanRemarkKind.NotInClass or ScanRemarkKind.MarkedAbsent or ScanRemarkKind.NoSheet or ScanRemarkKind.NothingMarked))
            .ToList();
        if (scan.IsFaulty) return scan with { Remarks = remarks };
        if (record.Sheet is null || printed is null) remarks.Add(new ScanRemark(ScanRemarkKind.NoSheet));
        var isMarked = scan.Items.Any(i => i.Value is not null || i.IsWaiting || i.Answer is not null);
        if (!isMarked) remarks.Add(new ScanRemark(ScanRemarkKind.NothingMarked));
        if (scan.PupilId is { } pupilId && isMarked)
        {
            if (record.Pupils.All(p => p.Id != pupilId)) remarks.Add(new ScanRemark(ScanRemarkKind.NotInClass, record.Class.Name));
            if (IsAbsent(record, pupilId)) remarks.Add(new ScanRemark(ScanRemarkKind.MarkedAbsent));
        }
        return scan with { Remarks = remarks };
    }

    private static Scan Closed(Scan scan)
    {
        if (scan.State == ScanState.Discarded) return scan;
        // An empty sheet nobody is named on, and one somebody was too far away to mark, wait for nobody.
        var isEmpty = scan.Remarks.Any(r => r.Kind == ScanRemarkKind.NothingMarked);
        return scan with { State = scan.Waiting.Any() || (scan.IsHeld && !isEmpty) ? ScanState.Waiting : ScanState.Done };
    }

    private static bool IsAbsent(LessonRecord record, Guid pupilId) =>
        EntryLog.Current(record.Entries.Where(e => e.PupilId == pupilId)).Any(e => e.Fact is Presence { IsPresent: false });

    internal static EntrySlot SlotOf(ScannedFact fact, LessonRecord record) => EntrySlot.Of(new Entry
    {
        SchoolId = record.School.Id, Id = default, LessonId = record.Lesson.Id, PupilId = fact.PupilId, TaskId = fact.TaskId, SetNumber = fact.SetNumber,
        TrialNumber = fact.TrialNumber, Fact = fact.Fact, Source = EntrySource.Paper, DeviceId = DeviceId, DeviceSequence = 1, MadeAt = default,
    });

    private static SheetPlace PlaceOf(ScannedFact fact, LessonRecord record, EntryLookup lookup) => new(
        fact.TaskId, lookup.TaskOf(fact.TaskId)?.Name, fact.SetNumber, fact.TrialNumber, record.Pupils.FirstOrDefault(p => p.Id == fact.PupilId)?.Label);
}
