using System.Text.Json.Nodes;
using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans;
using Slantwise.Surface.Tests.Paper;
using Slantwise.Surface.Tests.Paper.Reading;

namespace Slantwise.Surface.Tests.Host;

/// <summary>The demo's lesson on paper: printed by the command, drawn by poppler, marked with a pen, read by the command.</summary>
public sealed class SheetReadTests(DemoFolder demo)
{
    private const int Dpi = 150;

    [Fact]
    public async Task Read_MarkedSheets_SaysWhatWasMarkedAndTheSecondTimeNothing()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        var pages = Pages(folder, count: 6);
        var random = new Random(20261125);
        var meant = new Dictionary<string, Dictionary<string, decimal>>();
        foreach (var form in await FormsAsync(folder, pages))
        {
            var marks = Filled(form.Layout, random);
            Mark(form.File, form.Layout, marks.Select(m => m.Mark), random);
            meant[form.File] = marks.ToDictionary(m => m.Question, m => m.Value);
        }

        var read = (await ReadAsync(folder, pages)).Json();
        var addedCount = 0;
        foreach (var page in read["pages"]!.AsArray())
        {
            var form = Assert.Single(page!["forms"]!.AsArray())!;
            Assert.Equal(("read", "done"), (form["code"]!.GetValue<string>(), form["state"]!.GetValue<string>()));
            Assert.Empty(form["review"]!.AsArray());
            var said = form["items"]!.AsArray().Where(i => i!["value"] is not null).ToDictionary(i => i!["key"]!.GetValue<string>(), i => i!["value"]!.GetValue<decimal>());
            Assert.Equal(meant[folder.At(page["file"]!.GetValue<string>())].OrderBy(m => m.Key), said.OrderBy(m => m.Key));
            addedCount += form["addedCount"]!.GetValue<int>();
        }
        Assert.Equal(addedCount, read["addedCount"]!.GetValue<int>());
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var entries = (await LessonOfDemo.LoadAsync(store, lessonId)).Entries;
        Assert.Equal(addedCount, entries.Count);
        Assert.All(entries, e => Assert.Equal(EntrySource.Paper, e.Source));
        // A trial is an entry each, a level, a prediction and what comes next as well.
        Assert.Equal(meant.Values.Sum(m => m.Count(v => !v.Key.StartsWith("Cue", StringComparison.Ordinal))), entries.Count(e => e.Fact is not CueTick));

        var again = (await ReadAsync(folder, pages)).Json();
        Assert.Equal(0, again["addedCount"]!.GetValue<int>());
        Assert.All(again["pages"]!.AsArray(), p => Assert.True(p!["forms"]![0]!["again"]!.GetValue<bool>()));
    }

    [Fact]
    public async Task Read_TwoLevelsMarked_GoesToReviewWithAPicture()
    {
        using var folder = await demo.CopyAsync();
        await LessonOfDemo.PrepareAsync(folder);
        var form = (await FormsAsync(folder, Pages(folder, count: 1)))[0];
        Mark(form.File, form.Layout, ["Level-1-1-1", "Level-1-1-2", "Held-1-1-1"], new Random(1));

        var dry = (await ReadAsync(folder, [form.File], "--dry-run", "--review-out", folder.At("look"))).Json();
        var read = dry["pages"]![0]!["forms"]![0]!;
        Assert.Equal(["Level-1-1-0"], read["review"]!.AsArray().Select(r => r!.GetValue<string>()));
        Assert.Equal((1, "waiting"), (dry["addedCount"]!.GetValue<int>(), read["state"]!.GetValue<string>()));
        var file = Assert.Single(Directory.EnumerateFiles(folder.At("look")));
        Assert.Equal($"{read["pupil"]!.GetValue<string>()}-Level-1-1-0.png", Path.GetFileName(file));
        using var crop = SKBitmap.Decode(file);
        Assert.True(crop.Width > crop.Height && crop.Width > 100, $"{crop.Width} × {crop.Height}");
        // Nothing was stored: the same page is new.
        var said = await ReadAsync(folder, [form.File]);
        Assert.False(said.Json()["pages"]![0]!["forms"]![0]!["again"]!.GetValue<bool>());
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var school = (await store.ListSchoolsAsync()).Single().Id;
        var scan = Assert.Single(await store.ListScansAsync(school, null));
        Assert.Contains("Photo", (await store.ListScanPicturesAsync(school, scan.Id)).Select(p => p.PictureKey));
    }

    [Fact]
    public async Task Read_TheTeachersObservationSheet_ChecksItsRowsPupils()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        var print = await HostProgram.RunAsync("sheet", "print", "--kind", "observation", "--lesson", "latest", "-o", folder.At("sheets.pdf"), "--data", folder.FullPath);
        Assert.True(print.ExitCode == 0, print.Error);
        var form = (await FormsAsync(folder, Pages(folder, count: 1)))[0];
        string[] marks = ["TeacherSet-1-1-2", "TeacherMet-1-1-1", "TeacherNotMet-1-1-2", "TeacherMet-1-2-1"];
        Mark(form.File, form.Layout, marks, new Random(1));

        var read = (await ReadAsync(folder, [form.File])).Json()["pages"]![0]!["forms"]![0]!;
        Assert.True(read["isObservation"]!.GetValue<bool>());
        // Whose set was watched in the second row nobody marked.
        Assert.Equal(["TeacherSet-1-2-0"], read["review"]!.AsArray().Select(r => r!.GetValue<string>()));
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var record = await LessonOfDemo.LoadAsync(store, lessonId);
        var first = record.Pupils.OrderBy(p => p.Label, StringComparer.Create(System.Globalization.CultureInfo.InvariantCulture, true)).First();
        Assert.Equal([(first.Id, 2, new TeacherCheck(1, true, true)), (first.Id, 2, new TeacherCheck(2, false, true))],
            record.Entries.Select(e => (e.PupilId!.Value, e.SetNumber!.Value, (TeacherCheck)e.Fact)));
    }

    [Fact]
    public async Task Read_FilesThatAreNone_AreSaidAndTheOthersRead()
    {
        using var folder = await demo.CopyAsync();
        await LessonOfDemo.PrepareAsync(folder);
        var page = Pages(folder, count: 1)[0];
        var bad = folder.Write("notes.jpg", "not a picture");
        var both = (await ReadAsync(folder, [bad, page])).Json();
        Assert.Equal("fileKind", both["pages"]![0]!["problem"]!["kind"]!.GetValue<string>());
        Assert.Equal("read", both["pages"]![1]!["forms"]![0]!["code"]!.GetValue<string>());
        var none = await HostProgram.RunInAsync(null, "es_ES.UTF-8", "sheet", "read", bad, "--data", folder.FullPath);
        Assert.Equal(2, none.ExitCode);
        Assert.Contains("notes.jpg, página 1: Esto no es una imagen JPEG o PNG ni un PDF.", none.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sheet", "read")]
    [InlineData("sheet", "read", "gone.jpg")]
    [InlineData("sheet", "read", "--watch", "gone")]
    public async Task Read_NothingThere_IsRefused(params string[] arguments)
    {
        using var folder = await demo.CopyAsync();
        var run = await HostProgram.RunAsync([.. arguments, "--data", folder.FullPath]);
        Assert.Equal(2, run.ExitCode);
        Assert.Single(run.ErrorLines);
    }

    [Fact]
    public async Task Watch_AFileThatComes_IsReadAndAnswered()
    {
        using var folder = await demo.CopyAsync();
        await LessonOfDemo.PrepareAsync(folder);
        var page = Pages(folder, count: 1)[0];
        Directory.CreateDirectory(folder.At("in"));
        using var process = HostProgram.Start("C.UTF-8", "sheet", "read", "--watch", folder.At("in"), "--json", "--data", folder.FullPath);
        File.Copy(page, folder.At("in/one.png"));
        var line = await process.StandardOutput.ReadLineAsync().WaitAsync(HostProgram.Patience);
        Assert.Equal("one.png", JsonNode.Parse(line!)!["file"]!.GetValue<string>());
        HostProgram.Terminate(process);
        await process.WaitForExitAsync().WaitAsync(HostProgram.Patience);
        Assert.Equal(0, process.ExitCode);
    }

    private static Task<ProgramRun> ReadAsync(TempFolder folder, IEnumerable<string> files, params string[] more) =>
        HostProgram.RunAsync(["sheet", "read", .. files, "--json", .. more, "--data", folder.FullPath]);

    private static List<string> Pages(TempFolder folder, int count)
    {
        ScannedPrint.Of(folder.At("sheets.pdf"), folder.At("page"), Dpi, count);
        return [.. Directory.EnumerateFiles(folder.FullPath, "page*.png").Order(StringComparer.Ordinal)];
    }

    // Which form is on which page, by its code, and where its fields are, by what was kept when it was printed.
    private static async Task<List<(string File, SheetLayout Layout)>> FormsAsync(TempFolder folder, IReadOnlyList<string> pages)
    {
        var empty = (await ReadAsync(folder, pages, "--dry-run")).Json();
        Assert.Equal(0, empty["addedCount"]!.GetValue<int>());
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var school = (await store.ListSchoolsAsync()).Single().Id;
        var forms = new List<(string, SheetLayout)>();
        foreach (var page in empty["pages"]!.AsArray())
        {
            var form = Assert.Single(page!["forms"]!.AsArray())!;
            Assert.Equal("nothingMarked", Assert.Single(form["remarks"]!.AsArray())!["kind"]!.GetValue<string>());
            Assert.Empty(form["writings"]!.AsArray());
            forms.Add((folder.At(page["file"]!.GetValue<string>()), (await store.FindLayoutAsync(school, form["layout"]!.GetValue<long>()))!.Form().Layout));
        }
        return forms;
    }

    // What a pupil may mark: in most sets a level, a prediction, trials done, not yet and not tried, some cues, what comes next.
    private static List<(string Mark, string Question, decimal Value)> Filled(SheetLayout layout, Random random)
    {
        var marks = new List<(string, string, decimal)>();
        var fields = layout.Fields.Select(f => SheetField.FromKey(f.Key)!.Value).ToList();
        foreach (var set in fields.Where(f => f.SetNumber > 0).GroupBy(f => (f.TaskNumber, f.SetNumber)))
        {
            if (random.Next(5) == 0) continue;
            foreach (var group in set.GroupBy(Slantwise.Records.Scans.Intake.ScanItems.QuestionOf))
            {
                var isTried = group.Key.Kind is SheetFieldKind.Held or SheetFieldKind.Cue or SheetFieldKind.Predicted;
                if (isTried && random.Next(3) == 0) continue;
                var field = group.ElementAt(random.Next(group.Count()));
                marks.Add((field.Key, group.Key.Key, Slantwise.Records.Scans.Intake.ScanItems.ValueOf(field)));
            }
        }
        return marks;
    }

    private static void Mark(string file, SheetLayout layout, IEnumerable<string> keys, Random random)
    {
        using var page = SKBitmap.Decode(file);
        using (var canvas = new SKCanvas(page))
        {
            canvas.Scale((float)(Dpi / 25.4));
            using var pen = new SKPaint { Color = new SKColor(35, 40, 110), StrokeWidth = 0.5f, IsStroke = true, IsAntialias = true, StrokeCap = SKStrokeCap.Round };
            foreach (var key in keys)
            {
                var field = layout.Fields.Single(f => f.Key == key);
                var (x, y, w, h) = ((float)field.XMm, (float)field.YMm, (float)field.WidthMm, (float)field.HeightMm);
                if (random.Next(2) == 0)
                {
                    canvas.DrawLine(x + 0.2f * w, y + 0.5f * h, x + 0.45f * w, y + 0.8f * h, pen);
                    canvas.DrawLine(x + 0.45f * w, y + 0.8f * h, x + 0.85f * w, y + 0.15f * h, pen);
                }
                else
                {
                    canvas.DrawLine(x + 0.2f * w, y + 0.2f * h, x + 0.8f * w, y + 0.8f * h, pen);
                    canvas.DrawLine(x + 0.2f * w, y + 0.8f * h, x + 0.8f * w, y + 0.2f * h, pen);
                }
            }
        }
        using var data = page.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(file, data.ToArray());
    }
}
