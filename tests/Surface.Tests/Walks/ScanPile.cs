using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Records.Entries;
using Slantwise.Records.Schools;
using Slantwise.Surface.Tests.Host;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Walks;

/// <summary>The demo's lesson on paper, marked by six pupils with everything that goes wrong with a pen, and a file that is no picture.</summary>
/// <param name="LessonId">The lesson.</param>
/// <param name="Files">The pages in order, the broken file among them.</param>
/// <param name="Pupils">The six, in the order of their pages.</param>
internal sealed record ScanPile(Guid LessonId, IReadOnlyList<string> Files, IReadOnlyList<Pupil> Pupils)
{
    /// <summary>Boxes that wait before anybody has said whose the page without a code is.</summary>
    public const int WaitingCount = 6;

    private const int Dpi = 150;

    /// <summary>Prints, marks and "photographs" the pile into a copy of the demo folder.</summary>
    public static async Task<ScanPile> MakeAsync(TempFolder folder)
    {
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        Tool.Run("pdftoppm", "-r", $"{Dpi}", "-l", "12", "-png", folder.At("sheets.pdf"), folder.At("page"));
        List<string> pages = [.. Directory.EnumerateFiles(folder.FullPath, "page*.png").Order(StringComparer.Ordinal)];
        var read = (await HostProgram.RunAsync(["sheet", "read", .. pages, "--json", "--dry-run", "--data", folder.FullPath])).Json();
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var record = await LessonOfDemo.LoadAsync(store, lessonId);
        List<Pupil> pupils = [.. record.Pupils.OrderBy(p => p.Code, StringComparer.Ordinal).Take(6)];

        var forms = new List<SheetLayout>();
        foreach (var page in read["pages"]!.AsArray()) forms.Add((await store.FindLayoutAsync(record.School.Id, page!["forms"]![0]!["layout"]!.GetValue<long>()))!.Form().Layout);
        for (var i = 0; i < pages.Count; i++) Draw(pages[i], forms[i], i % 2 == 0 ? First(i / 2) : Second);

        // The fourth was typed before, with another level than the sheet shows.
        var sheet = record.Sheet!.Content.Tasks[0];
        var recorder = new Recorder(record.School.Id, lessonId, EntrySource.Desk, "desk", TimeProvider.System, record.Entries);
        await store.AppendEntriesAsync(record.School.Id, [recorder.Put(pupils[3].Id, sheet.TaskId, 1, null, new Choice(sheet.Levels[0].Id))!]);
        return new ScanPile(lessonId, [.. pages.Take(4), folder.Write("notes.jpg", "not a picture"), .. pages.Skip(4)], pupils);
    }

    private static IReadOnlyList<(string Key, Pen Pen)> Second =>
        [("Level-2-1-2", Pen.Tick), ("Predicted-2-1-3", Pen.Cross), ("Held-2-1-1", Pen.Tick), ("NotYet-2-1-2", Pen.Cross), ("Next-2-1-1", Pen.Tick)];

    private static IReadOnlyList<(string Key, Pen Pen)> First(int pupil) => pupil switch
    {
        // Two levels, and a trial that is both.
        0 => [("Level-1-1-1", Pen.Tick), ("Level-1-1-2", Pen.Cross), ("Held-1-1-1", Pen.Tick), ("Held-1-1-2", Pen.Tick), ("NotYet-1-1-2", Pen.Tick)],
        // No level.
        1 => [("Held-1-1-1", Pen.Tick), ("NotYet-1-1-2", Pen.Tick), ("Next-1-1-2", Pen.Cross)],
        // A dot of a pencil where the level is, and two ways on.
        2 => [("Level-1-1-2", Pen.Faint), ("Held-1-1-1", Pen.Cross), ("Next-1-1-1", Pen.Tick), ("Next-1-1-2", Pen.Tick)],
        // Plain, and words by hand.
        3 => [("Level-1-1-3", Pen.Cross), ("Held-1-1-1", Pen.Tick), ("Cue-1-1-1", Pen.Tick), ("OwnWords-1-0-0", Pen.Words)],
        // Plain, with coffee on the code.
        4 => [("Level-1-1-2", Pen.Tick), ("Held-1-1-1", Pen.Tick), ("Code", Pen.Blot)],
        _ => [("Level-1-1-4", Pen.Tick), ("Held-1-1-1", Pen.Tick), ("Predicted-1-1-2", Pen.Tick)],
    };

    private static void Draw(string file, SheetLayout layout, IReadOnlyList<(string Key, Pen Pen)> marks)
    {
        using var page = SKBitmap.Decode(file);
        using (var canvas = new SKCanvas(page))
        {
            canvas.Scale((float)(Dpi / 25.4));
            foreach (var (key, pen) in marks) Draw(canvas, BoxOf(layout, key), pen);
        }
        using var data = page.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(file, data.ToArray());
    }

    private static SKRect BoxOf(SheetLayout layout, string key)
    {
        if (key == "Code") return SKRect.Create((float)layout.Code.XMm, (float)layout.Code.YMm, (float)layout.Code.SizeMm, (float)layout.Code.SizeMm);
        if (layout.Fields.FirstOrDefault(f => f.Key == key) is { } field) return SKRect.Create((float)field.XMm, (float)field.YMm, (float)field.WidthMm, (float)field.HeightMm);
        var words = layout.Writings.Single(w => w.Key == key);
        return SKRect.Create((float)words.XMm, (float)words.YMm, (float)words.WidthMm, (float)words.HeightMm);
    }

    private static void Draw(SKCanvas canvas, SKRect box, Pen pen)
    {
        using var ink = new SKPaint { Color = new SKColor(35, 40, 110), StrokeWidth = 0.5f, IsStroke = true, IsAntialias = true, StrokeCap = SKStrokeCap.Round };
        SKPoint At(float x, float y) => new(box.Left + x * box.Width, box.Top + y * box.Height);
        switch (pen)
        {
            case Pen.Tick:
                canvas.DrawLine(At(0.2f, 0.5f), At(0.45f, 0.8f), ink);
                canvas.DrawLine(At(0.45f, 0.8f), At(0.85f, 0.15f), ink);
                break;
            case Pen.Cross:
                canvas.DrawLine(At(0.2f, 0.2f), At(0.8f, 0.8f), ink);
                canvas.DrawLine(At(0.2f, 0.8f), At(0.8f, 0.2f), ink);
                break;
            case Pen.Faint:
                ink.Color = new SKColor(150, 150, 160);
                ink.StrokeWidth = 0.3f;
                canvas.DrawLine(At(0.45f, 0.45f), At(0.62f, 0.58f), ink);
                break;
            case Pen.Words:
                for (var i = 0; i < 40; i++)
                    canvas.DrawLine(At(0.03f + i * 0.014f, i % 2 == 0 ? 0.15f : 0.85f), At(0.03f + (i + 1) * 0.014f, i % 2 == 0 ? 0.85f : 0.15f), ink);
                break;
            case Pen.Blot:
                using (var coffee = new SKPaint { Color = new SKColor(90, 60, 40) }) canvas.DrawRect(box, coffee);
                break;
        }
    }

    private enum Pen
    {
        Tick,
        Cross,
        Faint,
        Words,
        Blot,
    }
}
