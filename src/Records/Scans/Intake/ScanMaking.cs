using System.Globalization;
using Slantwise.Engines.Marks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Scans.Intake;

/// <summary>From a form as it was read to a scan: whose it is, which lesson's, from which version, and what its marks say.</summary>
/// <param name="Scan">The scan.</param>
/// <param name="IsKept">Whether it is worth keeping: its lesson is known, and nobody was erased whom it names.</param>
/// <param name="Record">Its lesson; none where that is not known.</param>
/// <param name="Printed">The version it was printed from; none where that is not known.</param>
internal sealed record ScanMaking(Scan Scan, bool IsKept, LessonRecord? Record, SheetVersion? Printed)
{
    // A pencilled stroke in a box for seconds covers a few hundredths of it; a word in a place for sentences a few thousandths. Dirt covers less.
    private const double WrittenFraction = 0.01;
    private const double WordsFraction = 0.002;

    public static async Task<ScanMaking> OfAsync(
        ReadPage page, int formNumber, ReadForm form, IntakeContext context, IntakeOptions options, TimeProvider clock, CancellationToken cancel)
    {
        var scan = new Scan
        {
            SchoolId = context.School.Id,
            Id = EntryId.New(clock),
            File = page.File,
            FilePage = page.PageNumber,
            FormNumber = formNumber,
            PictureTag = page.Picture?.Tag ?? 0,
            ReadAt = clock.GetUtcNow(),
            CodeFound = form.CodeFound,
            LayoutTag = form.LayoutTag,
        };
        switch (form.CodeFound)
        {
            case CodeFound.OtherSchool: return Said(scan, ScanRemarkKind.OtherSchool);
            case CodeFound.Foreign: return Said(scan, ScanRemarkKind.ForeignCode);
            case CodeFound.Read: return await OfCodeAsync(scan, form.Code!, page, form, context, options, cancel);
        }
        if (form.LayoutTag is not { } tag) return Said(scan, FaultOf(form.Reading.Fault) is { } kind and not ScanRemarkKind.FormNotFound ? kind : ScanRemarkKind.NoForm);
        var seen = context.CodeSeenOn(tag);
        if ((options.LessonId ?? (seen is null ? null : context.LessonOf(seen.LessonTag)?.Id)) is not { } lessonId) return Said(scan, ScanRemarkKind.NoForm);
        var record = await context.RecordAsync(lessonId, cancel);
        var version = seen?.SheetVersion ?? record.Lesson.SheetVersion;
        scan = scan with { LessonId = lessonId, SheetVersion = version, SheetPage = seen?.PageNumber, Remarks = [new ScanRemark(ScanRemarkKind.NoCode)] };
        return await ReadAsync(scan, page, form, context, record, cancel);
    }

    private static async Task<ScanMaking> OfCodeAsync(
        Scan scan, SheetCode code, ReadPage page, ReadForm form, IntakeContext context, IntakeOptions options, CancellationToken cancel)
    {
        if (context.LessonOf(code.LessonTag) is not { } lesson) return Said(scan, ScanRemarkKind.LessonUnknown);
        var record = await context.RecordAsync(lesson.Id, cancel);
        if (options.LessonId is { } asked && asked != lesson.Id)
        {
            return Said(scan with { LessonId = lesson.Id }, ScanRemarkKind.OtherLesson, record.Class.Name, lesson.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        }
        context.See(code);
        scan = scan with { LessonId = lesson.Id, PupilTag = code.PupilTag, SheetVersion = code.SheetVersion, SheetPage = code.PageNumber, IsObservation = code is { IsNamed: false, PupilTag: 0 } };
        if (code.IsNamed)
        {
            if (context.PupilOf(code.PupilTag) is not { } pupil) return Said(scan, ScanRemarkKind.PupilUnknown);
            scan = scan with { PupilId = pupil.Id };
        }
        else if (!scan.IsObservation)
        {
            scan = scan with { SpareNumber = (int)Math.Min(code.PupilTag, int.MaxValue), Remarks = [new ScanRemark(ScanRemarkKind.SpareSheet, Text(code.PupilTag))] };
        }
        else if (await context.FormAsync(code.LayoutTag, cancel) is { } kept)
        {
            var rows = kept.RowTags.Select(tag => context.PupilOf(tag)?.Id ?? Guid.Empty).ToList();
            scan = scan with { RowPupils = rows };
            if (rows.Count == 0) scan = scan with { Remarks = [new ScanRemark(ScanRemarkKind.RowsUnknown)] };
        }
        if (code.SheetVersion != lesson.SheetVersion && lesson.SheetVersion is { } now)
            scan = scan with { Remarks = [.. scan.Remarks, new ScanRemark(ScanRemarkKind.OldVersion, Text(code.SheetVersion), Text(now))] };
        return await ReadAsync(scan, page, form, context, record, cancel);
    }

    private static async Task<ScanMaking> ReadAsync(Scan scan, ReadPage page, ReadForm form, IntakeContext context, LessonRecord record, CancellationToken cancel)
    {
        var printed = scan.SheetVersion is { } version ? await context.VersionAsync(record.Lesson, version, cancel) : null;
        // A page of long words may have nothing to mark, and then nothing to trust.
        ScanRemarkKind? fault = form.Layout switch
        {
            null => ScanRemarkKind.LayoutUnknown,
            { Fields.Count: 0 } => null,
            _ => FaultOf(form.Reading.Fault),
        };
        if (fault is { } kind) return new ScanMaking(scan with { Remarks = [.. scan.Remarks, new ScanRemark(kind)] }, true, record, printed);
        if (printed is null) return new ScanMaking(scan, true, record, null);
        var items = ScanItems.Of(form.Layout!, form.Reading.Fields, printed.Content).Concat(Seconds(page, form));
        // The row of a pupil who was erased since: nothing is kept of it.
        if (scan.IsObservation) items = items.Where(i => ScanFacts.PupilOf(scan, i.Question) is not null);
        var words = form.Layout!.Writings.Where(w => SheetField.FromKey(w.Key)?.Kind is SheetFieldKind.Because or SheetFieldKind.OwnWords or SheetFieldKind.Name);
        scan = scan with { Items = [.. items], Writings = [.. words.Where(w => IsWritten(page, form, w, WordsFraction)).Select(w => w.Key)] };
        return new ScanMaking(scan, true, record, printed);
    }

    private static IEnumerable<ScanItem> Seconds(ReadPage page, ReadForm form) =>
        from writing in form.Layout!.Writings
        let field = SheetField.FromKey(writing.Key)
        where field is { Kind: SheetFieldKind.Seconds } && IsWritten(page, form, writing, WrittenFraction)
        select new ScanItem { Question = field.Value, Doubt = ScanDoubt.ByHand };

    private static bool IsWritten(ReadPage page, ReadForm form, WrittenField writing, double fraction) =>
        form.Reading.Map is { } map && page.Picture is { } picture && picture.InkFraction(map, FormArea.Of(writing).Widened(-1)) >= fraction;

    private static ScanRemarkKind? FaultOf(PageFault fault) => fault switch
    {
        PageFault.NotFound => ScanRemarkKind.FormNotFound,
        PageFault.TooSmall => ScanRemarkKind.FormTooSmall,
        PageFault.Blurred => ScanRemarkKind.FormBlurred,
        PageFault.BadLight => ScanRemarkKind.FormBadLight,
        PageFault.CutOff => ScanRemarkKind.FormCutOff,
        _ => null,
    };

    private static ScanMaking Said(Scan scan, ScanRemarkKind kind, params string[] details) =>
        new(scan with { State = ScanState.Done, Remarks = [new ScanRemark(kind, details)] }, false, null, null);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
