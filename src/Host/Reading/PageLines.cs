using System.Globalization;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Reading;

/// <summary>A page as lines for a person: a line a form, then what waits and what to point out.</summary>
internal static class PageLines
{
    public static IReadOnlyList<string> Of(TakenPage page, PageNames names)
    {
        var culture = CultureInfo.CurrentUICulture;
        var where = HostWords.Say("PageOfFile", page.File, page.PageNumber);
        if (page.Problem is { } problem) return [$"{where}: {problem.Sentence(culture)}"];
        var lines = new List<string>();
        foreach (var form in page.Forms)
        {
            var scan = form.Scan;
            var said = HostWords.Say("PageTaken", names.Called(scan), scan.SheetPage ?? 0, form.Added.Count, scan.Waiting.Count());
            lines.Add(form.IsKept ? $"{where}: {said}" : where + ":");
            lines.AddRange(scan.Remarks.Select(r => "  " + r.Sentence(culture)));
            if (form.IsAgain && form.Added.Count == 0) lines.Add("  " + new ScanRemark(ScanRemarkKind.ReadBefore).Sentence(culture));
            if (names.SheetOf(scan) is { } sheet)
                lines.AddRange(scan.Waiting.Select(i => $"  {ScanItemWords.Asks(i, sheet, culture)} {ScanItemWords.Doubts(i, sheet, culture)}"));
            lines.AddRange(FindingLines.Of(form.Findings).Select(line => "  " + line));
        }
        return lines;
    }
}
