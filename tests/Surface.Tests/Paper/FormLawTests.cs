using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Marks;
using Slantwise.Paper;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>Whatever a sheet asks and however it is printed, its forms can be marked and read back.</summary>
public sealed class FormLawTests
{
    private const double SlackMm = 0.011;
    private const double QuietMm = 4 * 20 / 25.0;

    public static TheoryData<PaperSize, string, string> Ways
    {
        get
        {
            var ways = new TheoryData<PaperSize, string, string>();
            foreach (var size in Enum.GetValues<PaperSize>())
                foreach (var language in (string[])["en", "es"])
                    foreach (var look in (string[])["usual", "large", "two-up", "wide", "signs", "wide signs", "large wide signs", "two-up wide signs", "cream two-sided"])
                        ways.Add(size, language, look);
            return ways;
        }
    }

    // Sets, trials, levels, cues and predictions: all 3 600 together, each in one of the 36 ways; tasks 1 to 3 in turn.
    [Theory]
    [MemberData(nameof(Ways))]
    public void Of_EveryCombination_FormsAreMarkableAndComplete(PaperSize size, string language, string look)
    {
        var way = Ways.Select(w => (w.Data.Item1, w.Data.Item2, w.Data.Item3)).ToList().IndexOf((size, language, look));
        var options = OptionsOf(size, language, look);
        var at = 0;
        foreach (var sets in Enumerable.Range(1, 4))
            foreach (var trials in Enumerable.Range(1, 10))
                foreach (var levels in Enumerable.Range(1, 6))
                    foreach (var cues in Enumerable.Range(1, 5))
                        foreach (var predicts in Enum.GetValues<PredictionKind>())
                        {
                            if (at++ % Ways.Count != way) continue;
                            var content = ContentOf(at / Ways.Count % 3 + 1, sets, trials, levels, cues, predicts);
                            var forms = TaskSheetPages.Of(PaperLessons.Of(1, content), options).SelectMany(p => p.Forms.Select(f => (Form: f, p.Scene))).ToList();
                            foreach (var (form, scene) in forms) AssertMarkable(form, scene, look.StartsWith("large", StringComparison.Ordinal) ? 7 : 5);
                            Assert.Equal(
                                KeysOf(content).Order(StringComparer.Ordinal), forms.SelectMany(f => f.Form.Layout.Fields).Select(f => f.Key).Order(StringComparer.Ordinal));
                        }
        Assert.True(at == 3600);
    }

    [Theory]
    [InlineData(PaperSize.A4, "en")]
    [InlineData(PaperSize.Letter, "es")]
    public void Of_EveryObservationSheet_IsMarkableAndHasAllItsRows(PaperSize size, string language)
    {
        foreach (var sets in Enumerable.Range(1, 4))
        {
            foreach (var cues in Enumerable.Range(1, 5))
            {
                foreach (var pupils in (int[])[1, 17, 36])
                {
                    var record = PaperLessons.Of(pupils, ContentOf(2, sets, 5, 4, cues, PredictionKind.SuccessCount));
                    var pages = ObservationPages.Of(record, OptionsOf(size, language, "usual"));
                    foreach (var page in pages) AssertMarkable(page.Forms[0], page.Scene, 5);
                    foreach (var task in (int[])[1, 2])
                    {
                        var rows = pages.Where(p => p.Forms[0].Layout.Fields.Any(f => SheetField.FromKey(f.Key)!.Value.TaskNumber == task)).SelectMany(p => p.Forms[0].Kept.Form().RowTags);
                        Assert.Equal(record.Pupils.Select(p => SheetCode.TagOf(p.Id)).Order(), rows.Order());
                    }
                    Assert.All(pages, p => Assert.Equal(
                        p.Forms[0].Kept.Form().RowTags.Count * (2 * cues + (sets > 1 ? sets : 0)), p.Forms[0].Layout.Fields.Count));
                }
            }
        }
    }

    private static PaperOptions OptionsOf(PaperSize size, string language, string look) => new(size, CultureInfo.GetCultureInfo(language))
    {
        IsLargePrint = look.Contains("large"),
        IsTwoUp = look.Contains("two-up"),
        HasWideSpacing = look.Contains("wide"),
        HasSigns = look.Contains("signs"),
        IsCream = look.Contains("cream"),
        IsTwoSided = look.Contains("two-sided"),
    };

    private static SheetContent ContentOf(int tasks, int sets, int trials, int levels, int cues, PredictionKind predicts) => new()
    {
        Title = "Balance",
        SetCount = sets,
        TrialCount = trials,
        Predicts = predicts,
        Tasks = [.. Enumerable.Range(1, tasks).Select(t => PaperLessons.Task(
            t * 100, "One-foot balance", "Stand on one foot like a tree and stay still.", [.. Enumerable.Range(1, cues).Select(c => $"Eyes on one spot, hips level, {c}")], "",
            [.. Enumerable.Range(1, levels).Select(l => ($"Arms out, eyes open, way {l}", new Dose(t == 2 ? DoseKind.RepetitionsCount : DoseKind.HoldS, 5 * l), Array.Empty<Slantwise.Records.Schools.BodyDemand>()))]))],
    };

    // By hand, from what a sheet asks.
    private static List<string> KeysOf(SheetContent content)
    {
        var keys = new List<string>();
        for (var task = 1; task <= content.Tasks.Count; task++)
        {
            var levels = content.Tasks[task - 1].Levels;
            for (var set = 1; set <= content.SetCount; set++)
            {
                keys.AddRange(levels.Select((_, i) => $"Level-{task}-{set}-{i + 1}"));
                for (var trial = 1; trial <= content.TrialCount; trial++) keys.AddRange([$"Held-{task}-{set}-{trial}", $"NotYet-{task}-{set}-{trial}"]);
                keys.AddRange(content.Tasks[task - 1].Cues.Select((_, i) => $"Cue-{task}-{set}-{i + 1}"));
                keys.AddRange([$"Next-{task}-{set}-{(int)NextLevel.Same}", $"Next-{task}-{set}-{(int)NextLevel.Harder}", $"Next-{task}-{set}-{(int)NextLevel.Easier}"]);
                if (content.Predicts == PredictionKind.SuccessCount) keys.AddRange(Enumerable.Range(0, content.TrialCount + 1).Select(n => $"Predicted-{task}-{set}-{n}"));
                if (content.Predicts != PredictionKind.HoldS) continue;
                // Twice the longest hold or more, in ten steps a child counts in: 5 s in ones, 10 s in twos, 15 s in threes, to 25 s in fives, 30 s in tens.
                var step = levels.Count switch { _ when task == 2 => 1, 1 => 1, 2 => 2, 3 => 3, <= 5 => 5, _ => 10 };
                keys.AddRange(Enumerable.Range(0, 11).Select(n => $"Predicted-{task}-{set}-{n * step}"));
            }
        }
        return keys;
    }

    private static void AssertMarkable(PrintedForm form, Scene scene, double leastMm)
    {
        var layout = form.Layout;
        Assert.Equal(layout.Fields.Count, layout.Fields.Select(f => f.Key).Distinct().Count());
        Assert.All(layout.Fields, f => Assert.Equal(SheetField.FromKey(f.Key)!.Value.Group, f.Group));
        Assert.All(layout.Writings, w => Assert.NotNull(SheetField.FromKey(w.Key)));
        var fields = layout.Fields.Select(f => new Place(f.Key, f.XMm, f.YMm, f.XMm + f.WidthMm, f.YMm + f.HeightMm)).ToList();
        var writings = layout.Writings.Select(w => new Place(w.Key, w.XMm, w.YMm, w.XMm + w.WidthMm, w.YMm + w.HeightMm)).ToList();
        var code = new Place("code", layout.Code.XMm - QuietMm, layout.Code.YMm - QuietMm, layout.Code.XMm + layout.Code.SizeMm + QuietMm, layout.Code.YMm + layout.Code.SizeMm + QuietMm);
        var anchors = layout.Anchors.Select(a => new Place("anchor", a.XMm - a.SizeMm / 2, a.YMm - a.SizeMm / 2, a.XMm + a.SizeMm / 2, a.YMm + a.SizeMm / 2)).ToList();
        foreach (var field in fields)
        {
            // A sentence is made only for what fails: there are millions of fields.
            var fault = field.Right - field.Left < leastMm - SlackMm || field.Bottom - field.Top < leastMm - SlackMm ? "is small"
                : field.Left < 14.9 || field.Top < 14.9 || field.Right > layout.WidthMm - 14.9 || field.Bottom > layout.HeightMm - 14.9 ? "is at the edge"
                : anchors.Exists(a => field.AwayMm(a) < 2) || field.AwayMm(code) < 0 ? "is near an anchor or the code"
                : writings.Exists(w => field.AwayMm(w) < 0.5) ? "is in a place to write"
                : "";
            if (fault.Length > 0) Assert.Fail($"{field} {fault}.");
        }
        for (var i = 0; i < fields.Count; i++)
            for (var j = i + 1; j < fields.Count; j++)
                if (fields[i].AwayMm(fields[j]) < 1.5 - SlackMm) Assert.Fail($"{fields[i]} is near {fields[j]}.");
        Assert.All(writings, w => Assert.True(w.AwayMm(code) >= -SlackMm && w.Bottom <= layout.HeightMm - 14.9, $"{w} is in the code or at the edge."));
        AssertEmptyInside(form, scene, fields, code);
    }

    // Nothing is printed in a field, nor in the quiet zone around the code, but their own outline.
    private static void AssertEmptyInside(PrintedForm form, Scene scene, List<Place> fields, Place code)
    {
        var scale = form.ScaleFraction;
        Place OnForm(double left, double top, double right, double bottom) =>
            new("print", (left - form.LeftMm) / scale, (top - form.TopMm) / scale, (right - form.LeftMm) / scale, (bottom - form.TopMm) / scale);
        foreach (var shape in scene.Shapes)
        {
            var print = shape switch
            {
                Text t => OnForm(t.InkRoom().Left, t.InkRoom().Top, t.InkRoom().Right, t.InkRoom().Bottom),
                Line l => OnForm(Math.Min(l.X1Mm, l.X2Mm), Math.Min(l.Y1Mm, l.Y2Mm), Math.Max(l.X1Mm, l.X2Mm), Math.Max(l.Y1Mm, l.Y2Mm)),
                Disc d => OnForm(d.XMm - d.RadiusMm, d.YMm - d.RadiusMm, d.XMm + d.RadiusMm, d.YMm + d.RadiusMm),
                Box b => OnForm(b.XMm, b.YMm, b.XMm + b.WidthMm, b.YMm + b.HeightMm),
                Outline o => OnForm(
                    o.Steps.Where(s => s.Kind != OutlineStepKind.Close).Min(s => s.XMm), o.Steps.Where(s => s.Kind != OutlineStepKind.Close).Min(s => s.YMm),
                    o.Steps.Where(s => s.Kind != OutlineStepKind.Close).Max(s => s.XMm), o.Steps.Where(s => s.Kind != OutlineStepKind.Close).Max(s => s.YMm)),
                _ => throw new InvalidOperationException(),
            };
            // The ground, and boxes around several things, lie around a field and not in it.
            foreach (var field in fields.Where(f => f.AwayMm(print) < 0.5))
                if (!field.IsLike(print) && !print.IsAround(field)) Assert.Fail($"{shape} is printed in or at {field}.");
            if (code.AwayMm(print) < -0.05 && !print.IsAround(code) && !print.IsInside(code, QuietMm)) Assert.Fail($"{shape} is printed in the code's quiet zone.");
        }
    }

    private readonly record struct Place(string Name, double Left, double Top, double Right, double Bottom)
    {
        // Less than 0 where they overlap.
        public double AwayMm(Place other) => Math.Max(
            Math.Max(other.Left - Right, Left - other.Right), Math.Max(other.Top - Bottom, Top - other.Bottom));

        public bool IsLike(Place other) => Math.Abs(Left - other.Left) + Math.Abs(Top - other.Top) + Math.Abs(Right - other.Right) + Math.Abs(Bottom - other.Bottom) < 0.1;

        public bool IsAround(Place other) => Left < other.Left - 0.5 && Top < other.Top - 0.5 && Right > other.Right + 0.5 && Bottom > other.Bottom + 0.5;

        public bool IsInside(Place other, double byMm) => Left >= other.Left + byMm - 0.05 && Top >= other.Top + byMm - 0.05 && Right <= other.Right - byMm + 0.05 && Bottom <= other.Bottom - byMm + 0.05;
    }
}
