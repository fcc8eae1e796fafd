using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Planning.Space;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>Draws a hall, from the floor up.</summary>
internal sealed class HallPainter
{
    private const double MarginMm = 1;
    private const double WallMm = 0.9;

    private readonly SchoolHall _hall;
    private readonly HallLayout _layout;
    private readonly HallReading _reading;
    private readonly CultureInfo _culture;
    private readonly HallScale _scale;
    private readonly HallLegend _legend;
    private readonly HallBox _box;

    public HallPainter(SchoolHall hall, HallLayout layout, HallReading reading, HallBox box, CultureInfo culture)
    {
        box.Check();
        (_hall, _layout, _reading, _box, _culture) = (hall, layout, reading, box, culture);
        _legend = new HallLegend(hall, layout, reading, box, culture);
        var roomMm = box.WidthMm - 2 * MarginMm - SideWordsMm(box) - 2 * WallMm;
        var mmPerM = Math.Min(roomMm / hall.WidthM, (box.MostHeightMm - 2 * MarginMm - 2 * WordsMm - 2 * WallMm - _legend.HeightMm) / hall.DepthM);
        // However little room there is, a scale is more than 0.
        mmPerM = Math.Max(mmPerM, 0.1);
        var leftMm = LeftMm(box) + Math.Max(0, roomMm - hall.WidthM * mmPerM) / 2;
        _scale = new(mmPerM, leftMm, MarginMm + WordsMm + WallMm, hall.DepthM);
    }

    /// <summary>Where the left wall of a hall as wide as the drawing stands.</summary>
    public static double LeftMm(HallBox box) => MarginMm + SideWordsMm(box) + WallMm;

    private double WordsPt => _box.WordsPt;

    private double WordsMm => 0.6 * _box.WordsPt;

    // "12.25 m" beside the left wall.
    private static double SideWordsMm(HallBox box) => FittingText.WidthMm("00.00 m", box.WordsPt);

    public HallDrawing Draw()
    {
        var bottomMm = _scale.YMm(0) + WallMm + WordsMm;
        return new(
            _box.WidthMm, bottomMm + _legend.HeightMm + MarginMm, _scale, [.. Floor(), .. Shadows(), .. Things(), .. Walls()], [.. Names()], [.. _layout.Mats.Select(Mat)], [.. Above()], [.. Teacher()],
            [.. _legend.Shapes(_scale, bottomMm)], Description());
    }

    private IEnumerable<Shape> Floor()
    {
        yield return new Box(_scale.XMm(0), _scale.YMm(_hall.DepthM), _hall.WidthM * _scale.MmPerM, _hall.DepthM * _scale.MmPerM, Tone.Ground);
        // Every metre where metres can be told apart, every fifth a little stronger.
        var stepM = _scale.MmPerM >= 3 ? 1 : 5;
        for (var x = stepM; x < _hall.WidthM; x += stepM)
            yield return new Line(_scale.XMm(x), _scale.YMm(0), _scale.XMm(x), _scale.YMm(_hall.DepthM), 0.15, x % 5 == 0 ? Tone.AccentMiddle : Tone.AccentSoft);
        for (var y = stepM; y < _hall.DepthM; y += stepM)
            yield return new Line(_scale.XMm(0), _scale.YMm(y), _scale.XMm(_hall.WidthM), _scale.YMm(y), 0.15, y % 5 == 0 ? Tone.AccentMiddle : Tone.AccentSoft);
    }

    private IEnumerable<Shape> Shadows()
    {
        if (_layout.Teacher() is not { } place) yield break;
        foreach (var thing in _hall.OnFloor().Obstacles.Where(o => o.IsHigh))
        {
            var shadow = SightShadow.Of(place, thing.Place, _hall.WidthM, _hall.DepthM);
            foreach (var line in FloorHatch.Of([.. shadow.Select(p => (_scale.XMm(p.XM), _scale.YMm(p.YM)))], 1.5, 0.12, Tone.Muted)) yield return line;
        }
    }

    private IEnumerable<Shape> Things()
    {
        foreach (var thing in _hall.Things)
        {
            var place = Within(thing);
            if (place is not { WidthXM: > 0, DepthYM: > 0 }) continue;
            var (x, y, w, h) = (_scale.XMm(place.LeftXM), _scale.YMm(place.BackYM), place.WidthXM * _scale.MmPerM, place.DepthYM * _scale.MmPerM);
            yield return new Box(x, y, w, h, thing.IsHigh ? Tone.Muted : Tone.Ground);
            if (!thing.IsHigh) foreach (var line in FloorHatch.Of(FloorHatch.Corners(place, _scale), 1, 0.15, Tone.Muted, isFalling: true)) yield return line;
            yield return new Box(x, y, w, h, Tone.Muted, 0.35);
        }
    }

    // In the thing where there is room, else beside it on the side of the hall's middle.
    private IEnumerable<Shape> Names()
    {
        foreach (var thing in _hall.Things)
        {
            var place = Within(thing);
            if (place is not { WidthXM: > 0, DepthYM: > 0 }) continue;
            foreach (var shape in NameOf(thing, place, _scale.XMm(place.LeftXM), _scale.YMm(place.BackYM), place.WidthXM * _scale.MmPerM, place.DepthYM * _scale.MmPerM)) yield return shape;
        }
    }

    private IEnumerable<Shape> NameOf(HallThing thing, FloorRectangle place, double x, double y, double w, double h)
    {
        if (thing.Name.Length == 0) yield break;
        var (roomMm, lineMm) = (FittingText.WidthMm(thing.Name, WordsPt) + 1.6, 0.45 * WordsPt);
        if (roomMm <= w && lineMm <= h)
        {
            if (!thing.IsHigh) yield return new Box(x + w / 2 - roomMm / 2, y + h / 2 - lineMm / 2, roomMm, lineMm, Tone.Ground, 0, 0.6);
            yield return HallSigns.Centred(x + w / 2, y + h / 2, thing.Name, WordsPt, thing.IsHigh ? Tone.Ground : Tone.Ink, TextWeight.Bold);
            yield break;
        }
        if (h > 2 * w)
        {
            var isRight = place.Centre.XM > _hall.WidthM / 2;
            var name = HallSigns.Centred(isRight ? x - 1 : x + w + 1, y + h / 2, thing.Name, WordsPt, Tone.Muted);
            yield return name with { Anchor = isRight ? TextAnchor.End : TextAnchor.Start };
            yield break;
        }
        var isBack = place.Centre.YM > _hall.DepthM / 2;
        var middle = Math.Clamp(x + w / 2, _scale.XMm(0) + roomMm / 2, Math.Max(_scale.XMm(0) + roomMm / 2, _scale.XMm(_hall.WidthM) - roomMm / 2));
        yield return HallSigns.Centred(middle, isBack ? y + h + lineMm * 0.6 : y - lineMm * 0.6, thing.Name, WordsPt, Tone.Muted);
    }

    // What reaches beyond the walls is drawn up to them.
    private FloorRectangle Within(HallThing thing)
    {
        var (left, front) = (Math.Clamp(thing.LeftM, 0, _hall.WidthM), Math.Clamp(thing.FrontM, 0, _hall.DepthM));
        return new(left, front, Math.Clamp(thing.LeftM + thing.WidthM, 0, _hall.WidthM) - left, Math.Clamp(thing.FrontM + thing.DepthM, 0, _hall.DepthM) - front);
    }

    private IEnumerable<Shape> Walls()
    {
        var (w, h) = (_hall.WidthM * _scale.MmPerM, _hall.DepthM * _scale.MmPerM);
        yield return new Box(_scale.XMm(0) - WallMm / 2, _scale.YMm(_hall.DepthM) - WallMm / 2, w + WallMm, h + WallMm, Tone.Ink, WallMm, 0.3);
        var middle = _scale.XMm(_hall.WidthM / 2);
        yield return HallSigns.Centred(middle, _scale.YMm(_hall.DepthM) - WallMm - WordsMm / 2, HallWords.Text("Metres", _culture, _hall.WidthM), WordsPt, Tone.Muted);
        yield return HallSigns.Centred(middle, _scale.YMm(0) + WallMm + WordsMm / 2, HallWords.Text("Front", _culture), WordsPt, Tone.Muted, TextWeight.Bold);
        yield return new Text(
            _scale.XMm(0) - WallMm - 1, _scale.YMm(_hall.DepthM / 2) + 1, HallWords.Text("Metres", _culture, _hall.DepthM), WordsPt, Tone.Muted, TextAnchor.End);
    }

    private MatShapes Mat(LaidMat mat, int index)
    {
        var (long_, short_) = (_layout.MatLengthM * _scale.MmPerM, _layout.MatWidthM * _scale.MmPerM);
        var (w, h) = mat.IsTurned ? (short_, long_) : (long_, short_);
        var (x, y) = (_scale.XMm(mat.XM), _scale.YMm(mat.YM));
        var half = _layout.ClearM / 2 * _scale.MmPerM;
        var (isClashing, isHidden) = (_reading.ClashingMats.Contains(index), _reading.HiddenMats.Contains(index));
        var tone = isClashing ? Tone.Caution : isHidden ? Tone.Muted : Tone.Accent;
        // What stays clear ends at the walls.
        var (left, right) = (Math.Max(x - w / 2 - half, _scale.XMm(0)), Math.Min(x + w / 2 + half, _scale.XMm(_hall.WidthM)));
        var (top, bottom) = (Math.Max(y - h / 2 - half, _scale.YMm(_hall.DepthM)), Math.Min(y + h / 2 + half, _scale.YMm(0)));
        Shape[] zone = half > 0 && right > left && bottom > top ? [new Box(left, top, right - left, bottom - top, Tone.AccentSoft, 0, Math.Min(half, Math.Min(right - left, bottom - top) / 2))] : [];

        var body = new List<Shape>();
        if (mat.FallM > 0) body.Add(DashedCircle.Of(x, y, mat.FallM * _scale.MmPerM, isClashing ? Tone.Caution : Tone.Accent, 0.22));
        body.Add(new Box(x - w / 2, y - h / 2, w, h, isHidden ? Tone.Ground : Tone.AccentMiddle, 0, 0.5));
        if (isHidden)
        {
            body.AddRange(FloorHatch.Of(
                [(x - w / 2, y - h / 2), (x + w / 2, y - h / 2), (x + w / 2, y + h / 2), (x - w / 2, y + h / 2)], 1, 0.15, Tone.Muted));
        }
        body.Add(new Box(x - w / 2, y - h / 2, w, h, tone, isClashing ? 0.6 : 0.35, 0.5));
        var pt = Math.Clamp(Math.Min(w, h) * 0.62 / 25.4 * 72, WordsPt, 14);
        var number = (index + 1).ToString(_culture);
        if (isHidden) body.Add(new Disc(x, y, pt / 72 * 25.4 * 0.72, Tone.Ground));
        body.Add(HallSigns.Centred(x, y, number, pt, Tone.Ink, TextWeight.Bold));
        // Signs sit on the corners, so that the number stays free: station left above, too near right above, not seen right below.
        var sign = Math.Clamp(Math.Min(w, h) * 0.5, 1.8, 4);
        var signs = new List<Shape>();
        if (StationLetter.Of(mat.Station) is { } letter) signs.AddRange(HallSigns.Station(x - w / 2, y - h / 2, WordsPt, letter));
        if (isClashing) signs.AddRange(HallSigns.Clash(x + w / 2, y - h / 2, sign));
        if (isHidden) signs.AddRange(HallSigns.Hidden(x + w / 2, y + h / 2, sign));
        return new(zone, body, signs);
    }

    private IEnumerable<Shape> Above()
    {
        var (need, mats) = (_layout.Need(), _layout.Placed());
        foreach (var clash in _reading.Clashes)
        {
            if (ClashGap.Of(clash, _hall, need, mats) is not var (from, to)) continue;
            yield return new Line(_scale.XMm(from.XM), _scale.YMm(from.YM), _scale.XMm(to.XM), _scale.YMm(to.YM), 0.9, Tone.Caution);
        }
        if (_reading.Sight is not { } sight) yield break;
        foreach (var hidden in sight.HiddenMats)
            yield return new Line(_scale.XMm(sight.Place.XM), _scale.YMm(sight.Place.YM), _scale.XMm(mats[hidden].Centre.XM), _scale.YMm(mats[hidden].Centre.YM), 0.2, Tone.Second, IsDashed: true);
    }

    private IEnumerable<Shape> Teacher() => _layout.Teacher() is { } place
        ? HallSigns.Teacher(_scale.XMm(place.XM), _scale.YMm(place.YM), Math.Clamp(_scale.MmPerM * 0.9, 5.5, 7), _reading.Back?.FacingRad ?? Math.PI / 2) : [];

    private string Description()
    {
        var what = HallWords.Text("Drawing", _culture, _hall.Name, _hall.WidthM, _hall.DepthM, _hall.Things.Count);
        if (_layout.Mats.Count == 0) return what;
        var mats = HallWords.TextCount("DrawingMats", _culture, _layout.Mats.Count, _reading.Clashes.Count);
        return $"{what} {mats} {string.Join(' ', _reading.SightNotes.Select(n => n.Sentence))}".TrimEnd();
    }
}
