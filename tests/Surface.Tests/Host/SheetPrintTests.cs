using System.Globalization;
using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Host;

public sealed class SheetPrintTests(DemoFolder demo)
{
    [Theory]
    [InlineData("sheets", "")]
    [InlineData("sheets", "--two-up --two-sided --signs")]
    [InlineData("observation", "")]
    public async Task Print_Forms_KeepsTheirLayouts(string kind, string flags)
    {
        using var folder = await demo.CopyAsync();
        var run = await HostProgram.RunAsync(
            ["sheet", "print", "--kind", kind, .. flags.Split(' ', StringSplitOptions.RemoveEmptyEntries), "-o", folder.At("a.pdf"), "--json", "--data", folder.FullPath]);
        var lessonId = run.Json()["lessonId"]!.GetValue<Guid>();

        await using var store = await LessonOfDemo.OpenAsync(folder);
        var record = await LessonOfDemo.LoadAsync(store, lessonId);
        var options = new PaperOptions(PaperSize.A4, CultureInfo.GetCultureInfo("en")) { IsTwoUp = flags.Contains("two-up"), IsTwoSided = flags.Contains("two-sided"), HasSigns = flags.Contains("signs") };
        var pages = kind == "sheets" ? TaskSheetPages.Of(record, options) : ObservationPages.Of(record, options);
        Assert.Equal(pages.Count, run.Json()["pageCount"]!.GetValue<int>());
        var forms = pages.SelectMany(p => p.Forms).ToList();
        Assert.NotEmpty(forms);
        foreach (var form in forms.DistinctBy(f => f.Kept.Tag))
            Assert.Equal(form.Kept, await store.FindLayoutAsync(record.School.Id, form.Code.LayoutTag));
    }
}
