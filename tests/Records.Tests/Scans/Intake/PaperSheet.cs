using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Scans.Intake;

/// <summary>The invented lesson's sheet as a form, and pages of it as a reader would give them: marked by key, doubtful with a question mark.</summary>
internal static class PaperSheet
{
    public static readonly SheetLayout Layout = LayoutOf(Towers.SetCount);
    public static readonly PrintedLayout Kept = PrintedLayout.Of(SchoolId, Layout);

    public static SheetLayout LayoutOf(int setCount)
    {
        var fields = new List<MarkField>();
        var writings = new List<WrittenField>();
        for (var task = 1; task <= Towers.Tasks.Count; task++)
        {
            for (var set = 1; set <= setCount; set++)
            {
                for (var level = 1; level <= Towers.Tasks[task - 1].Levels.Count; level++) Add(new(SheetFieldKind.Level, task, set, level));
                for (var number = 0; number <= Towers.TrialCount; number++) Add(new(SheetFieldKind.Predicted, task, set, number));
                for (var trial = 1; trial <= Towers.TrialCount; trial++)
                {
                    Add(new(SheetFieldKind.Held, task, set, trial));
                    Add(new(SheetFieldKind.NotYet, task, set, trial));
                    writings.Add(new WrittenField(new SheetField(SheetFieldKind.Seconds, task, set, trial).Key, 10 * trial, 200, 8, 6));
                }
                for (var cue = 1; cue <= Towers.Tasks[task - 1].Cues.Count; cue++) Add(new(SheetFieldKind.Cue, task, set, cue));
                for (var next = 1; next <= 3; next++) Add(new(SheetFieldKind.Next, task, set, next));
            }
        }
        writings.Add(new WrittenField(new SheetField(SheetFieldKind.OwnWords).Key, 10, 250, 150, 20));
        return new SheetLayout(210, 297, [], new CodePlace(175, 262, 20), fields, writings);

        void Add(SheetField field) => fields.Add(new MarkField(field.Key, field.Group, fields.Count % 20 * 10, 20 + fields.Count / 20 * 10, 5, 5, false));
    }

    public static SheetCode Code(Guid pupilId, int version = 1, int page = 1) =>
        new(SheetCode.LessonTagOf(LessonId, Taught.Lesson.SheetId!.Value), SheetCode.TagOf(pupilId), true, version, page, Kept.Tag);

    public static SheetCode Spare(int number) => new(SheetCode.LessonTagOf(LessonId, Taught.Lesson.SheetId!.Value), number, false, 1, 1, Kept.Tag);

    /// <summary>A reading of the whole form; "Level-1-1-2" for a mark, "?Level-1-1-2" for what may be one.</summary>
    public static IReadOnlyList<FieldReading> Readings(SheetLayout layout, params string[] marks) => [.. layout.Fields.Select(f =>
        marks.Contains(f.Key) ? new FieldReading(f.Key, MarkVerdict.Marked, 0.9999)
        : marks.Contains("?" + f.Key) ? new FieldReading(f.Key, MarkVerdict.Doubtful, 0.5)
        : new FieldReading(f.Key, MarkVerdict.Empty, 0.0001))];

    public static ReadForm Form(SheetCode? code, params string[] marks) => new(
        code is null ? CodeFound.None : CodeFound.Read, code, Kept.Tag, Layout, new FormReading(PageFault.None, Readings(Layout, marks), new SquareMap()));

    public static ReadPage Page(string file, params ReadForm[] forms) => new(file, 1, null, forms, new BlankPicture(SheetCode.TagOf(System.Text.Encoding.UTF8.GetBytes(file))), default);

    /// <summary>One pixel a millimetre.</summary>
    internal sealed class SquareMap : PageMap
    {
        public override PixelPoint At(double xMm, double yMm) => new(xMm, yMm);
    }

    /// <summary>A picture whose pieces say where they were cut; written on where a test says so.</summary>
    internal sealed class BlankPicture(long tag) : PagePicture
    {
        public HashSet<double> WrittenAtMm { get; } = [];

        public override long Tag => tag;

        public override byte[] Photo() => [1, 2, 3];

        public override byte[] Crop(PageMap map, FormArea area) => [(byte)area.XMm, (byte)area.YMm];

        public override double InkFraction(PageMap map, FormArea area) => WrittenAtMm.Contains(area.YMm - 1) ? 0.1 : 0;
    }
}
