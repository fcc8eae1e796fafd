using System.Globalization;
using Slantwise.Engines.Marks;
using Slantwise.Host.Answers;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Reading;

/// <summary>A page as <c>sheet read --json</c> gives it; <c>docs/reading.md</c> says what each part is.</summary>
internal static class PageJson
{
    public static object Of(TakenPage page, PageNames names) => new
    {
        file = page.File,
        page = page.PageNumber,
        problem = page.Problem is { } problem ? RemarkOf(problem) : null,
        decodeMs = Ms(page.Times.DecodeS),
        codeMs = Ms(page.Times.CodeS),
        readMs = Ms(page.Times.ReadS),
        forms = page.Forms.Select(f => Of(f, names)).ToList(),
    };

    private static object Of(TakenForm form, PageNames names)
    {
        var scan = form.Scan;
        return new
        {
            scanId = form.IsKept ? scan.Id : (Guid?)null,
            code = scan.CodeFound,
            pupil = names.CodeOf(scan.PupilId),
            pupilId = scan.PupilId,
            spare = scan.SpareNumber,
            isObservation = scan.IsObservation,
            lessonId = scan.LessonId,
            className = names.ClassOf(scan),
            date = names.LessonOf(scan)?.Date,
            version = scan.SheetVersion,
            page = scan.SheetPage,
            layout = scan.LayoutTag,
            state = scan.State,
            again = form.IsAgain,
            remarks = scan.Remarks.Select(RemarkOf).ToList(),
            fields = scan.Items.SelectMany(i => i.Fields).Select(FieldOf).ToList(),
            items = scan.Items.Select(i => ItemOf(i, scan, names)).ToList(),
            writings = scan.Writings,
            review = scan.Waiting.Select(i => i.Key).ToList(),
            addedCount = form.Added.Count,
            added = form.Added.Select(e => new { id = e.Id, pupil = names.CodeOf(e.PupilId), taskId = e.TaskId, set = e.SetNumber, trial = e.TrialNumber, fact = e.Fact }).ToList(),
            findings = FindingLines.ToJson(form.Findings),
        };
    }

    private static object FieldOf(FieldReading field) => new { key = field.Key, verdict = field.Verdict, marked = Math.Round(field.MarkedFraction, 6) };

    private static object ItemOf(ScanItem item, Scan scan, PageNames names) => new
    {
        key = item.Key,
        kind = item.Question.Kind,
        task = item.Question.TaskNumber,
        set = IsRow(item) ? (int?)null : item.Question.SetNumber,
        row = IsRow(item) ? item.Question.SetNumber : (int?)null,
        number = item.Question.Number,
        value = item.Settled,
        certainty = Math.Round(item.CertainFraction, 6),
        doubt = item.Doubt,
        isWaiting = item.IsWaiting,
        before = item.Before,
        asks = names.SheetOf(scan) is { } sheet && item.IsWaiting
            ? $"{ScanItemWords.Asks(item, sheet, CultureInfo.CurrentUICulture)} {ScanItemWords.Doubts(item, sheet, CultureInfo.CurrentUICulture)}"
            : null,
    };

    private static bool IsRow(ScanItem item) => item.Question.Kind is SheetFieldKind.TeacherMet or SheetFieldKind.TeacherSet;

    private static object RemarkOf(ScanRemark remark) => new { kind = remark.Kind, sentence = remark.Sentence(CultureInfo.CurrentUICulture) };

    private static double Ms(double seconds) => Math.Round(seconds * 1000, 1);
}
