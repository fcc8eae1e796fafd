using System.Runtime.CompilerServices;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Records.Scans.Intake;

/// <summary>Takes in a pile of photographed sheets: what is certain becomes entries, what is not waits for a person, and nothing is guessed.</summary>
/// <param name="store">Where everything goes.</param>
/// <param name="reader">Reads pages.</param>
/// <param name="schoolId">The school.</param>
/// <param name="clock">Dates scans and entries.</param>
public sealed class PileIntake(IStore store, IPageReader reader, Guid schoolId, TimeProvider clock)
{
    // So much around a box that the number printed beside it is seen, too.
    private const double BesideMm = 4;

    // Around a set: its heading and what is printed beside its rows.
    private const double AroundSetMm = 8;

    /// <summary>Takes in files, a page at a time. Each page is durable before it is given.</summary>
    /// <param name="files">Any files in any order; one that cannot be read is said and leaves the others alone.</param>
    /// <param name="options">Which lesson, and whether for show only.</param>
    /// <param name="cancel">Stops between pages; what was given stays.</param>
    /// <returns>
    /// A page each. In the files' order, but for pages without a readable code that came before any with one: they come last, when the pile's forms are known.
    /// </returns>
    /// <exception cref="ArgumentException">The store has no such school or lesson.</exception>
    public async IAsyncEnumerable<TakenPage> TakeAsync(
        IEnumerable<ScanFile> files, IntakeOptions options, [EnumeratorCancellation] CancellationToken cancel = default)
    {
        var context = await IntakeContext.LoadAsync(store, schoolId, cancel);
        if (options.LessonId is { } lessonId) await context.RecordAsync(lessonId, cancel);
        var later = new List<(ScanFile File, HashSet<int> Pages)>();
        foreach (var file in files)
        {
            var expected = await ExpectedAsync(context, options, cancel);
            var put = new HashSet<int>();
            await foreach (var page in reader.ReadAsync(file, expected, cancel))
            {
                if (expected.WithoutCode.Count == 0 && page.Problem is null && page.Forms.All(IsUntold)) put.Add(page.PageNumber);
                else yield return await TakeAsync(page, context, options, cancel);
            }
            if (put.Count > 0) later.Add((file, put));
        }
        foreach (var (file, pages) in later)
        {
            var expected = await ExpectedAsync(context, options, cancel);
            await foreach (var page in reader.ReadAsync(file, expected with { PageNumbers = pages }, cancel))
                yield return await TakeAsync(page, context, options, cancel);
        }
    }

    private static bool IsUntold(ReadForm form) => form is { CodeFound: CodeFound.None or CodeFound.Damaged, LayoutTag: null };

    private async Task<ExpectedForms> ExpectedAsync(IntakeContext context, IntakeOptions options, CancellationToken cancel) =>
        new(schoolId, async (tag, stop) => (await context.FormAsync(tag, stop))?.Layout)
        {
            WithoutCode = await context.KnownFormsAsync(options.LessonId, cancel),
        };

    private async Task<TakenPage> TakeAsync(ReadPage page, IntakeContext context, IntakeOptions options, CancellationToken cancel)
    {
        var forms = new List<TakenForm>();
        for (var i = 0; i < page.Forms.Count; i++) forms.Add(await TakeAsync(page, i + 1, page.Forms[i], context, options, cancel));
        return new TakenPage(page.File, page.PageNumber, page.Problem, forms, page.Times);
    }

    private async Task<TakenForm> TakeAsync(
        ReadPage page, int formNumber, ReadForm form, IntakeContext context, IntakeOptions options, CancellationToken cancel)
    {
        var (scan, isKept, record, printed) = await ScanMaking.OfAsync(page, formNumber, form, context, options, clock, cancel);
        if (!isKept || record is null) return new TakenForm(scan, [], [], false, false, []);

        var before = (await context.ScansAsync(record.Lesson.Id, cancel)).FirstOrDefault(s => s.IsSamePage(scan));
        if (before is not null)
        {
            var merged = ScanMerge.Of(before, scan);
            if (ReferenceEquals(merged, before)) return new TakenForm(before, [], [], true, true, []);
            scan = merged;
        }
        var plan = ScanPlan.Of(scan, record, printed, clock);
        var pictures = PicturesOf(plan.Scan, page, form, context.School.Pictures);
        if (!options.IsDryRun)
        {
            // Entries first: should the machine stop in between, the page is read again, and entries taken once are not taken twice.
            if (plan.Entries.Count > 0) await store.AppendEntriesAsync(schoolId, plan.Entries, cancel);
            await store.SaveScanAsync(ScanSaves.Of(plan.Scan, pictures, context.School.Pictures), cancel);
        }
        context.Add(record.Lesson.Id, plan.Entries);
        context.Keep(plan.Scan);
        var waiting = plan.Scan.Waiting.Select(i => i.Key).ToHashSet();
        return new TakenForm(plan.Scan, plan.Entries, plan.Findings, true, before is not null, [.. pictures.Where(p => waiting.Contains(p.PictureKey))]);
    }

    private static List<ScanPicture> PicturesOf(Scan scan, ReadPage page, ReadForm form, PictureKeeping keeping)
    {
        var pictures = new List<ScanPicture>();
        if (page.Picture is not { } picture) return pictures;
        if (scan.State == ScanState.Waiting || keeping.KeepsPhotos) Add(ScanPicture.Photo, picture.Photo());
        if (form is not { Layout: { } layout, Reading.Map: { } map }) return pictures;
        var fields = layout.Fields.Where(f => SheetField.FromKey(f.Key) is not null).ToLookup(f => ScanItems.QuestionOf(SheetField.FromKey(f.Key)!.Value).Key);
        var sets = fields.SelectMany(f => f).ToLookup(f => (SheetField.FromKey(f.Key)!.Value.TaskNumber, SheetField.FromKey(f.Key)!.Value.SetNumber));
        foreach (var item in scan.Items.Where(i => i.Doubt is not (ScanDoubt.None or ScanDoubt.ByHand) && fields.Contains(i.Key)))
        {
            Add(item.Key, picture.Crop(map, FormArea.Around([.. fields[item.Key]]).Widened(BesideMm)));
            Add(ScanPicture.RowOf(item.Key), picture.Crop(map, FormArea.Around([.. sets[(item.Question.TaskNumber, item.Question.SetNumber)]]).Widened(AroundSetMm)));
        }
        var byHand = scan.Items.Where(i => i.Doubt == ScanDoubt.ByHand).Select(i => i.Key).Concat(scan.Writings).ToHashSet();
        foreach (var writing in layout.Writings.Where(w => byHand.Contains(w.Key))) Add(writing.Key, picture.Crop(map, FormArea.Of(writing).Widened(1)));
        return pictures;

        void Add(string key, byte[] bytes) => pictures.Add(new ScanPicture(scan.SchoolId, scan.Id, key, bytes));
    }
}
