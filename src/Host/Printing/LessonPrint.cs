using System.Globalization;
using System.Text;
using Slantwise.Engines.Drawing;
using Slantwise.Host.Words;
using Slantwise.Paper;
using Slantwise.Paper.Cards;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Pack;
using Slantwise.Paper.Posters;
using Slantwise.Paper.RiskPages;
using Slantwise.Records;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;

namespace Slantwise.Host.Printing;

/// <summary>A lesson's printed documents, for the command and for the desk's links alike.</summary>
internal static class LessonPrint
{
    /// <summary>The pages; empty where there is nothing to print: a class without pupils. The lesson has a frozen sheet.</summary>
    public static IReadOnlyList<PrintedPage> Pages(LessonRecord record, LessonPlans plans, PrintKind kind, PaperOptions options) => kind switch
    {
        PrintKind.Class => Unread(ClassSheetPages.Of(record, options)),
        PrintKind.Observation => ObservationPages.Of(record, options),
        PrintKind.Stations => Unread(StationCardPages.Of(record, options)),
        PrintKind.Poster => Unread(PosterPages.Of(record, options)),
        PrintKind.Cues => Unread(CueCardPages.Of(record, options)),
        PrintKind.Lesson => Unread(LessonPage.Of(record, plans, options)),
        PrintKind.Pack => LessonPack.Of(record, plans, options),
        PrintKind.Risk => Unread(RiskPagePages.Of(RiskPage.Of(record, plans.Risk ?? new() { Content = record.Sheet?.Content }, options.Language), options)),
        _ => TaskSheetPages.Of(record, options),
    };

    private static IReadOnlyList<PrintedPage> Unread(IReadOnlyList<Scene> pages) => [.. pages.Select(s => new PrintedPage(s, []))];

    /// <summary>Keeps the layouts of what is printed, so that it can be read whatever is printed later.</summary>
    public static Task KeepLayoutsAsync(IStore store, LessonRecord record, IReadOnlyList<PrintedPage> pages, CancellationToken cancel) =>
        store.KeepLayoutsAsync(record.School.Id, [.. pages.SelectMany(p => p.Forms).Select(f => f.Kept).DistinctBy(k => k.Tag)], cancel);

    /// <summary>Pages as a PDF.</summary>
    public static byte[] Pdf(IReadOnlyList<PrintedPage> pages, LessonRecord record, PrintKind kind, CultureInfo language)
    {
        using var pdf = new MemoryStream();
        PdfWriter.Write([.. pages.Select(p => p.Scene)], Title(record, kind, language), language, pdf);
        return pdf.ToArray();
    }

    /// <summary>A name for the file that says what is in it, in letters every file system takes.</summary>
    public static string FileName(LessonRecord record, PrintKind kind) => FileName(record, HostWords.Say("FileOf" + kind)) + ".pdf";

    /// <summary>The name of a file about a lesson, without its end: class, day, what it is. No pupil's name.</summary>
    public static string FileName(LessonRecord record, string what)
    {
        var name = new StringBuilder();
        foreach (var c in record.Class.Name.Normalize(NormalizationForm.FormKC))
            name.Append(char.IsLetterOrDigit(c) ? c : '-');
        return $"{name}-{record.Lesson.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}-{what}";
    }

    private static string Title(LessonRecord record, PrintKind kind, CultureInfo language) => string.Join(" · ", new[]
    {
        HostWords.In(language, "TitleOf" + kind),
        record.Class.Name,
        record.Lesson.Title,
        HostWords.Day(record.Lesson.Date, language),
    }.Where(part => part.Length > 0));
}
