using System.Globalization;
using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>What stands under a hall's drawing: how long five metres are, and what each sign means. Only what is there is explained.</summary>
internal sealed class HallLegend
{
    private const double Pt = 9;
    private const double RowMm = 5.6;
    private const double SignMm = 8;
    private const double BetweenMm = 5;
    private const double AboveMm = 1.5;

    // In line with the left wall of a hall as wide as the drawing.
    private const double LeftMm = 12.9;

    private readonly double _widthMm;
    private readonly CultureInfo _culture;
    private readonly SchoolHall _hall;
    private readonly List<(string Words, Func<double, double, IEnumerable<Shape>> Sign)> _items = [];
    private readonly List<(int Row, double LeftMm)> _places = [];

    public HallLegend(SchoolHall hall, HallLayout layout, HallReading reading, double widthMm, CultureInfo culture)
    {
        (_hall, _widthMm, _culture) = (hall, widthMm, culture);
        if (layout.Mats.Count > 0)
        {
            Add("LegendMat", (x, y) => [new Box(x, y - 1.6, 5, 3.2, Tone.AccentMiddle, 0, 0.4), new Box(x, y - 1.6, 5, 3.2, Tone.Accent, 0.35, 0.4), HallSigns.Centred(x + 2.5, y, "1", 8, Tone.Ink, TextWeight.Bold)]);
            if (layout.ClearM > 0) Add("LegendClear", (x, y) => [new Box(x, y - 2, 6, 4, Tone.AccentSoft, 0, 1.5), new Box(x, y - 2, 6, 4, Tone.Faint, 0.1, 1.5)]);
            if (layout.Mats.Any(m => m.FallM > 0)) Add("LegendFall", (x, y) => [DashedCircle.Of(x + 2.5, y, 2.2, Tone.Accent, 0.25, 1)]);
        }
        if (layout.Stations.Count > 0) Add("LegendStation", (x, y) => HallSigns.Station(x + 2.5, y, 3.6, "A"));
        if (hall.Things.Any(t => t.IsHigh)) Add("LegendHigh", (x, y) => [new Box(x, y - 1.6, 5, 3.2, Tone.Muted)]);
        if (hall.Things.Any(t => !t.IsHigh))
        {
            Add("LegendLow", (x, y) =>
                [.. FloorHatch.Of([(x, y - 1.6), (x + 5, y - 1.6), (x + 5, y + 1.6), (x, y + 1.6)], 1, 0.15, Tone.Muted, isFalling: true), new Box(x, y - 1.6, 5, 3.2, Tone.Muted, 0.35)]);
        }
        if (layout.Teacher() is not null)
        {
            Add("LegendTeacher", (x, y) => HallSigns.Teacher(x + 2.5, y, 4.4, Math.PI / 2));
            if (hall.Things.Any(t => t.IsHigh)) Add("LegendShadow", (x, y) => FloorHatch.Of([(x, y - 1.8), (x + 6, y - 1.8), (x + 6, y + 1.8), (x, y + 1.8)], 1.5, 0.12, Tone.Muted));
        }
        if (reading.HiddenMats.Count > 0) Add("LegendHidden", (x, y) => HallSigns.Hidden(x + 2.5, y, 2.9));
        if (reading.Clashes.Count > 0) Add("LegendClash", (x, y) => HallSigns.Clash(x + 2.5, y, 3));
        Place();
    }

    /// <summary>The height it takes.</summary>
    public double HeightMm => AboveMm + RowMm + (_places.Count == 0 ? 0 : (_places.Max(p => p.Row) + 1) * RowMm);

    public IEnumerable<Shape> Shapes(HallScale scale, double topMm)
    {
        var y = topMm + AboveMm + RowMm / 2;
        var stepM = scale.MmPerM * 5 > 60 ? 0.5 : scale.MmPerM * 5 < 12 ? 5 : 1;
        // As long as whole steps go into a third of the hall, five steps at most.
        var steps = Math.Clamp((int)(_hall.WidthM / 3 / stepM), 1, 5);
        var left = LeftMm;
        for (var i = 0; i < steps; i++)
            yield return new Box(left + i * stepM * scale.MmPerM, y - 0.6, stepM * scale.MmPerM, 1.2, i % 2 == 0 ? Tone.Ink : Tone.Ground);
        yield return new Box(left, y - 0.6, steps * stepM * scale.MmPerM, 1.2, Tone.Ink, 0.2);
        yield return new Text(left + steps * stepM * scale.MmPerM + 1.5, y + 1.05, HallWords.Text("ScaleBar", _culture, steps * stepM), Pt, Tone.Ink);
        for (var i = 0; i < _items.Count; i++)
        {
            var (x, middle) = (left + _places[i].LeftMm, y + (_places[i].Row + 1) * RowMm);
            foreach (var shape in _items[i].Sign(x, middle)) yield return shape;
            yield return new Text(x + SignMm, middle + 1.05, _items[i].Words, Pt, Tone.Ink);
        }
    }

    private void Add(string key, Func<double, double, IEnumerable<Shape>> sign) => _items.Add((HallWords.Text(key, _culture), sign));

    private void Place()
    {
        var (row, left) = (0, 0.0);
        foreach (var (words, _) in _items)
        {
            var width = SignMm + FittingText.WidthMm(words, Pt);
            if (left > 0 && left + width > _widthMm - LeftMm - 2) (row, left) = (row + 1, 0);
            _places.Add((row, left));
            left += width + BetweenMm;
        }
    }
}
