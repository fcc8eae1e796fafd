using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>The steps from marks to an answer, in a picture that has all it needs.</summary>
internal sealed class MarkedReckoning
{
    private readonly MarkedPicture _picture;
    private readonly MarkedBody _body;
    private readonly MarkedScale _scale;
    private readonly PointPx[] _slopesPx;
    private readonly MarkedTilt _tilt;
    private readonly MarkedPlace _centre;
    private readonly MarkedPrint[] _prints;
    private readonly double[] _clicksH2;
    private readonly double _clickSdH;
    private readonly BodyTable _table;

    public MarkedReckoning(MarkedPicture picture, double clickSdH, BodyTable table)
    {
        (_picture, _clickSdH, _table) = (picture, clickSdH, table);
        _body = MarkedBody.Of(picture.Points, picture.Contacts.SelectMany(c => c.Ends).Where(e => e.Landmark is null).Select(e => e.At));
        (_scale, _slopesPx) = MarkedScale.Of(_body);
        _centre = Centre(table);
        _clicksH2 = [.. _body.ClickCounts.Select(count => clickSdH * clickSdH / count)];

        var places = MarkedPrint.Places(_body, picture.Contacts);
        var floor = places.Select(p => (p.OnFloor.At(_body.Points), p.OnFloor.VarianceH2(_clicksH2, new(1, 0), 0, _slopesPx) * _scale.PxPerH * _scale.PxPerH)).ToArray();
        _tilt = MarkedTilt.Of(picture, floor, clickSdH * _scale.PxPerH, _scale.PxPerH);
        _prints = [.. places.Select(p => MarkedPrint.Of(_body, p, _tilt, _scale.PxPerH))];
    }

    public MarkedBalance Balance()
    {
        var centrePx = _centre.At(_body.Points);
        var floorPx = _prints.Average(p => PointPx.Dot(p.OnFloorPx, _tilt.Down));
        var heightH = (floorPx - PointPx.Dot(centrePx, _tilt.Down)) / _scale.PxPerH;
        var (first, last) = (_prints.MinBy(p => p.FirstPx)!, _prints.MaxBy(p => p.LastPx)!);
        var (left, leftChance) = End(first, first.First, first.FirstPx, 1);
        var (right, rightChance) = End(last, last.Last, last.LastPx, -1);
        // It cannot be beyond both ends at once.
        var chance = leftChance + rightChance - 1;
        var gap = MarkedPlace.Sum((1, Centre(BodyTable.Female)), (-1, Centre(BodyTable.Male))).At(_body.Points);
        return new MarkedBalance(
            centrePx, centrePx + heightH * _scale.PxPerH * _tilt.Down, heightH, _scale, _tilt, left, right, Math.Clamp(chance, 0, 1),
            [.. _prints.Select(p => new MarkedExtent(p.Contact.Part, p.Contact.Side, AlongH(p.FirstPx, centrePx), AlongH(p.LastPx, centrePx)))],
            left.MarginH >= 0 && right.MarginH >= 0 ? Shares(centrePx) : [],
            _clickSdH, Math.Abs(PointPx.Dot(gap, _tilt.Level)) / _scale.PxPerH, [.. Cautions(heightH)]);
    }

    private double AlongH(double atPx, PointPx centrePx) => (atPx - PointPx.Dot(centrePx, _tilt.Level)) / _scale.PxPerH;

    private MarkedPlace Centre(BodyTable table) => MarkedCentre.Of(_body, MarkedSegment.Of(table, _body.HasMark(Landmark.Waist)));

    private (MarkedEnd End, double InsideFraction) End(MarkedPrint print, (MarkedPlace Place, Landmark? Landmark) end, double atPx, int inwards)
    {
        var place = end.Place;
        var centrePx = _centre.At(_body.Points);
        var marginH = -inwards * AlongH(atPx, centrePx);
        var placePx = place.At(_body.Points);
        var aboveH = PointPx.Dot(placePx - centrePx, _tilt.Down) / _scale.PxPerH;
        var inside = MarkedPlace.Sum((inwards, _centre), (-inwards, place));
        var shownPx = placePx + (atPx - PointPx.Dot(placePx, _tilt.Level)) * _tilt.Level;
        var found = new MarkedEnd(
            print.Contact.Part, print.Contact.Side, end.Landmark, shownPx, marginH, Sd(inside, aboveH, marginH), Math.Atan2(marginH, Math.Max(aboveH, 1e-9)));
        // Whether it is inside does not hang on the scale.
        return (found, Normal.CDF(0, Sd(inside, aboveH, 0), marginH));
    }

    // Clicks and guesses along the floor, the scale of the length, and the tilt at the end of its lever.
    private double Sd(MarkedPlace difference, double leverH, double lengthH) => Math.Sqrt(
        difference.VarianceH2(_clicksH2, _tilt.Level, lengthH, _slopesPx) + leverH * leverH * _tilt.TiltSdRad * _tilt.TiltSdRad);

    private IReadOnlyList<MarkedShare> Shares(PointPx centrePx)
    {
        var prints = _prints.Select(p => (IReadOnlyList<Point2>)[new(AlongH(p.FirstPx, centrePx), 0), new(AlongH(p.LastPx, centrePx), 0)]).ToArray();
        var bounds = LoadShares.OfPrints(prints, new(0, 0)).Shares;
        var (second, sd) = _prints.Length switch { 1 => (0, 0), 2 => Lever(centrePx), _ => (double.NaN, double.NaN) };
        return [.. _prints.Select((p, i) => new MarkedShare(
            p.Contact.Part, p.Contact.Side, i == 0 ? 1 - second : second, sd, bounds[i].LeastFraction, bounds[i].MostFraction))];
    }

    // What the second of two contacts carries. Two in one place of the view leave it open: NaN.
    private (double ShareFraction, double SdFraction) Lever(PointPx centrePx)
    {
        var (a, b) = (_prints[0], _prints[1]);
        var apartH = (b.MiddlePx - a.MiddlePx) / _scale.PxPerH;
        if (Math.Abs(apartH) < .01) return (double.NaN, double.NaN);
        var share = Math.Clamp(-AlongH(a.MiddlePx, centrePx) / apartH, 0, 1);
        var lever = MarkedPlace.Sum((1, _centre), (share - 1, a.Middle), (-share, b.Middle));
        var aboveH = -PointPx.Dot(lever.At(_body.Points), _tilt.Down) / _scale.PxPerH;
        return (share, Sd(lever, aboveH, 0) / Math.Abs(apartH));
    }

    private IEnumerable<MarkedCaution> Cautions(double heightH)
    {
        if (_scale.Lengths.Any(l => l.IsForeshortened)) yield return MarkedCaution.Foreshortened;
        if (_scale.Lengths.Any(l => l.IsOverlong)) yield return MarkedCaution.Overlong;
        if (_picture.Level == LevelBasis.PictureAndFloor && _tilt.IsFloorAslant) yield return MarkedCaution.FloorAslant;
        if (!(heightH > 0)) yield return MarkedCaution.BelowFloor;
        // A hidden toe moves nothing that could be seen.
        if (_centre.GuessesH.Any(g => Math.Abs(g) > .002) || _prints.Any(p => p.IsGuessed)) yield return MarkedCaution.Guessed;
        if (_prints.Any(p => p.IsAssumed)) yield return MarkedCaution.AssumedPrint;
    }
}
