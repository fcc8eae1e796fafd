using System.Diagnostics;
using System.Globalization;
using Slantwise.Paper;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

// Times the sheets of a class of 30: the pages with their forms, and the PDF. Target: under a second together, the first time as well.
var (school, en) = (Guid.CreateVersion7(), CultureInfo.GetCultureInfo("en"));
string[] postures = ["stork", "two-feet", "tripod", "crab"];
var task = new SheetTask
{
    TaskId = Guid.CreateVersion7(), Name = "One-foot balance", Purpose = "Stand like a tree and stay still.", Caution = "Two big steps from everybody else.",
    Cues = ["Eyes on one spot", "Hips level", "Standing knee soft", "Free foot off the other leg"],
    Levels = [.. postures.Select((p, i) => new Level { Id = Guid.CreateVersion7(), Name = $"This way of standing, number {i + 1}", Dose = new Dose(DoseKind.HoldS, 5), Posture = p })],
};
var record = new LessonRecord
{
    School = new School { Id = school, Name = "Riverbend School" },
    Class = new SchoolClass { SchoolId = school, Id = Guid.CreateVersion7(), Name = "5B" },
    Lesson = new Lesson { SchoolId = school, Id = Guid.CreateVersion7(), ClassId = Guid.CreateVersion7(), Date = new DateOnly(2026, 3, 12), Title = "Balance 2" },
    Sheet = new SheetVersion
    {
        SchoolId = school, SheetId = Guid.CreateVersion7(), Version = 1, FrozenAt = DateTimeOffset.UnixEpoch, Content = new SheetContent { Title = "Balance", Tasks = [task] },
    },
    Pupils = [.. Enumerable.Range(1, 30).Select(i => new Pupil { SchoolId = school, Id = Guid.CreateVersion7(), Code = $"P{i:00}", DisplayName = $"Pupil {i}" })],
};
Console.WriteLine($"{"",-14}{"pages",7}{"first ms",10}{"then ms",10}{"PDF ms",10}{"KB",7}");
foreach (var (name, options) in new[]
{
    ("usual", new PaperOptions(PaperSize.A4, en)),
    ("two-up", new PaperOptions(PaperSize.A4, en) { IsTwoUp = true }),
    ("large print", new PaperOptions(PaperSize.A4, en) { IsLargePrint = true }),
})
{
    IReadOnlyList<PrintedPage> pages = [];
    var first = Timed(() => pages = TaskSheetPages.Of(record, options));
    var then = Enumerable.Range(0, 5).Select(_ => Timed(() => pages = TaskSheetPages.Of(record, options))).Order().ElementAt(2);
    using var pdf = new MemoryStream();
    var written = Timed(() => PdfWriter.Write([.. pages.Select(p => p.Scene)], "Balance", en, pdf));
    Console.WriteLine($"{name,-14}{pages.Count,7}{first,10:0}{then,10:0}{written,10:0}{pdf.Length >> 10,7}");
}

// The processor's time, compiling on other threads included: the same on a busy machine.
static double Timed(Action work)
{
    var own = Process.GetCurrentProcess();
    var before = own.TotalProcessorTime;
    work();
    own.Refresh();
    return (own.TotalProcessorTime - before).TotalMilliseconds;
}
