using System.Globalization;
using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>What stands under a hall's drawing: how long a few metres are, and what each sign means. Only what is there is explained.</summary>
internal sealed class HallLegend
{
    private const double AboveMm = 1.5;
    private const double BetweenMm = 4;

    private readonly HallBox _box;
    private readonly CultureInfo _culture;
    private readonly SchoolHall _hall;
    private readonly double _k;
    private readonly List<(string Words, Func<double, double, IEnumerable<Shape>> Sign)> _items = [];

    public HallLegend(SchoolHall hall, HallLayout layout, HallReading reading, HallBox box, CultureInfo culture)
    {
        // Signs are as large as words ask: drawn for 9 points.
        (_hall, _box, _culture, _k) = (hall, box, culture, box.WordsPt / 9);
        Shape Bar(double x, double y, Tone tone, double strokeMm = 0) => new Box(x, y - 1.8 * _k, 5.4 * _k, 3.6 * _k, tone, strokeMm, 0.4);
        IReadOnlyList<(double, double)> Corners(double x, double y) => [(x, y - 1.8 * _k), (x + 5.4 * _k, y - 1.8 * _k), (x + 5.4 * _k, y + 1.8 * _k), (x, y + 1.8 * _k)];
        var middle = 2.7 * _k;
        if (layout.Mats.Count > 0)
        {
            Add("LegendMat", (x, y) => [Bar(x, y, Tone.AccentMiddle), Bar(x, y, Tone.Accent, 0.35), HallSigns.Centred(x + middle, y, "1", box.WordsPt, Tone.Ink, TextWeight.Bold)]);
            if (layout.ClearM > 0)
            {
                Add("LegendClear", (x, y) => new[] { (Tone.AccentSoft, 0.0), (Tone.Faint, 0.1) }.Select(b => new Box(x, y - 2 * _k, 5.8 * _k, 4 * _k, b.Item1, b.Item2, 1.5 * _k)));
            }
            if (layout.Mats.Any(m => m.FallM > 0)) Add("LegendFall", (x, y) => [DashedCircle.Of(x + middle, y, 2.1 * _k, Tone.Accent, 0.25, 1)]);
        }
        if (layout.Stations.Count > 0) Add("LegendStation", (x, y) => HallSigns.Station(x + middle, y, box.WordsPt, "A"));
        if (hall.Things.Any(t => t.IsHigh)) Add("LegendHigh", (x, y) => [Bar(x, y, Tone.Muted)]);
        if (hall.Things.Any(t => !t.IsHigh)) Add("LegendLow", (x, y) => [.. FloorHatch.Of(Corners(x, y), 1, 0.15, Tone.Muted, isFalling: true), Bar(x, y, Tone.Muted, 0.35)]);
        if (layout.Teacher() is not null)
        {
            Add("LegendTeacher", (x, y) => HallSigns.Teacher(x + middle, y + 0.3, 4.2 * _k, Math.PI / 2));
            if (hall.Things.Any(t => t.IsHigh)) Add("LegendShadow", (x, y) => FloorHatch.Of(Corners(x, y), 1.5, 0.12, Tone.Muted));
        }
        if (reading.HiddenMats.Count > 0) Add("LegendHidden", (x, y) => HallSigns.Hidden(x + middle, y, 2.9 * _k));
        if (reading.Clashes.Count > 0) Add("LegendClash", (x, y) => HallSigns.Clash(x + middle, y, 3 * _k));
    }

    /// <summary>The height it takes.</summary>
    public double HeightMm => AboveMm + RowMm * (1 + (_items.Count + Columns - 1) / Columns);

    private double RowMm => 5.4 * _k;

    private double SignMm => 7.6 * _k;

    // As many of one width as there is room for, so that signs stand under each other.
    private int Columns => _items.Count == 0 ? 1 : Math.Clamp((int)((_box.WidthMm - HallPainter.LeftMm(_box) + BetweenMm) / ColumnMm), 1, _items.Count);

    private double ColumnMm => SignMm + _items.Max(i => FittingText.WidthMm(i.Words, _box.WordsPt)) + BetweenMm;

    public IEnumerable<Shape> Shapes(HallScale scale, double topMm)
    {
        var (y, left) = (topMm + AboveMm + RowMm / 2, HallPainter.LeftMm(_box));
        var stepM = scale.MmPerM * 5 > 60 ? 0.5 : scale.MmPerM * 5 < 12 ? 5 : 1;
        // As long as whole steps go into a third of the hall, five steps at most.
        var steps = Math.Clamp((int)(_hall.WidthM / 3 / stepM), 1, 5);
        for (var i = 0; i < steps; i++)
            yield return new Box(left + i * stepM * scale.MmPerM, y - 0.6, stepM * scale.MmPerM, 1.2, i % 2 == 0 ? Tone.Ink : Tone.Ground);
        yield return new Box(left, y - 0.6, steps * stepM * scale.MmPerM, 1.2, Tone.Ink, 0.2);
        yield return Words(left + steps * stepM * scale.MmPerM + 1.5, y, HallWords.Text("ScaleBar", _culture, steps * stepM));
        for (var i = 0; i < _items.Count; i++)
        {
            var (x, middle) = (left + i % Columns * ColumnMm, y + (i / Columns + 1) * RowMm);
            foreach (var shape in _items[i].Sign(x, middle)) yield return shape;
            yield return Words(x + SignMm, middle, _items[i].Words);
        }
    }

    private Text Words(double xMm, double yMm, string words) => HallSigns.Centred(xMm, yMm, words, _box.WordsPt, Tone.Ink) with { Anchor = TextAnchor.Start };

    private void Add(string key, Func<double, double, IEnumerable<Shape>> sign) => _items.Add((HallWords.Text(key, _culture), sign));
}
