using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>Where each place of the sheet lies in the picture, and back: bent paper, a pinhole, a lens.</summary>
internal sealed class View
{
    private readonly Shot _shot;
    private readonly double _halfWidthMm;
    private readonly double _halfHeightMm;
    private readonly double _distanceMm;
    private readonly double[] _axes;
    private readonly double _focusPx;
    private readonly double _shiftXMm;
    private readonly double _shiftYMm;

    /// <summary>A picture of the right format in which the sheet fills its share.</summary>
    public View(Shot shot, double widthMm, double heightMm, Luck luck)
    {
        (_shot, _halfWidthMm, _halfHeightMm) = (shot, widthMm / 2, heightMm / 2);
        _distanceMm = shot.DistanceFraction * Math.Sqrt(widthMm * widthMm + heightMm * heightMm);
        _axes = Axes(shot);
        (WidthPx, HeightPx) = Format(shot, widthMm, heightMm);
        _focusPx = WidthPx * _distanceMm / widthMm;
        // The lens bends more towards the corners, so size and place are found in rounds.
        var (jitterX, jitterY) = (luck.Between(-1, 1), luck.Between(-1, 1));
        for (var round = 0; round < 8; round++)
        {
            var (left, top, right, bottom) = Bounds();
            var (spareX, spareY) = (Math.Max(0, WidthPx - (right - left)) / 2, Math.Max(0, HeightPx - (bottom - top)) / 2);
            _shiftXMm -= ((left + right - WidthPx) / 2 - .7 * jitterX * spareX) * _distanceMm / _focusPx;
            _shiftYMm -= ((top + bottom - HeightPx) / 2 - .7 * jitterY * spareY) * _distanceMm / _focusPx;
            _focusPx *= shot.FillFraction * Math.Min(WidthPx / (right - left), HeightPx / (bottom - top));
        }
        PxPerMm = _focusPx / _distanceMm;
    }

    public int WidthPx { get; }

    public int HeightPx { get; }

    /// <summary>In the middle of the sheet.</summary>
    public double PxPerMm { get; }

    public PixelPoint PxOf(double xMm, double yMm)
    {
        var (x, y, z) = Bent(xMm - _halfWidthMm, yMm - _halfHeightMm);
        var a = _axes;
        var cx = a[0] * x + a[1] * y + a[2] * z + _shiftXMm;
        var cy = a[3] * x + a[4] * y + a[5] * z + _shiftYMm;
        var cz = _distanceMm + a[6] * x + a[7] * y + a[8] * z;
        var (px, py) = (_focusPx * cx / cz, _focusPx * cy / cz);
        var radius2 = 4 * (px * px + py * py) / ((double)WidthPx * WidthPx + (double)HeightPx * HeightPx);
        var lens = 1 + _shot.LensFraction * radius2;
        return new(WidthPx / 2.0 + px * lens, HeightPx / 2.0 + py * lens);
    }

    public Point MmOf(double xPx, double yPx)
    {
        var (dx, dy) = (xPx - WidthPx / 2.0, yPx - HeightPx / 2.0);
        var norm = 4 / ((double)WidthPx * WidthPx + (double)HeightPx * HeightPx);
        var (ux, uy) = (dx, dy);
        for (var i = 0; i < 6; i++)
        {
            var lens = 1 + _shot.LensFraction * norm * (ux * ux + uy * uy);
            (ux, uy) = (dx / lens, dy / lens);
        }
        var a = _axes;
        // The ray through the pixel, in the sheet's directions: it starts at the camera.
        double rx = ux / _focusPx, ry = uy / _focusPx;
        var (ox, oy, oz) = Back(-_shiftXMm, -_shiftYMm, -_distanceMm);
        var (vx, vy, vz) = Back(rx, ry, 1);
        var (height, shiftX, shiftY) = (0.0, 0.0, 0.0);
        double x = 0, y = 0;
        for (var i = 0; i < (_shot.Bends.Count == 0 ? 1 : 12); i++)
        {
            var t = (height - oz) / vz;
            (x, y) = (ox + t * vx - shiftX, oy + t * vy - shiftY);
            var (bx, by, bz) = Bent(Math.Clamp(x, -2 * _halfWidthMm, 2 * _halfWidthMm), Math.Clamp(y, -2 * _halfHeightMm, 2 * _halfHeightMm));
            (height, shiftX, shiftY) = (bz, bx - Math.Clamp(x, -2 * _halfWidthMm, 2 * _halfWidthMm), by - Math.Clamp(y, -2 * _halfHeightMm, 2 * _halfHeightMm));
        }
        return new(x + _halfWidthMm, y + _halfHeightMm);

        (double, double, double) Back(double cx, double cy, double cz) =>
            (a[0] * cx + a[3] * cy + a[6] * cz, a[1] * cx + a[4] * cy + a[7] * cz, a[2] * cx + a[5] * cy + a[8] * cz);
    }

    private (double X, double Y, double Z) Bent(double x, double y)
    {
        var (sumX, sumY, sumZ) = (x, y, 0.0);
        foreach (var bend in _shot.Bends)
        {
            var (sin, cos) = Math.SinCos(bend.AcrossRad);
            var (height, shift) = bend.At(x * cos + y * sin);
            // Towards the camera, which looks along z.
            (sumX, sumY, sumZ) = (sumX - shift * cos, sumY - shift * sin, sumZ - height);
        }
        return (sumX, sumY, sumZ);
    }

    // A turn in the sheet's plane, then the lean: rows are the camera's directions in the sheet's.
    private static double[] Axes(Shot shot)
    {
        var ((st, ct), (sx, cx), (sy, cy)) = (Math.SinCos(shot.TurnRad), Math.SinCos(shot.LeanXRad), Math.SinCos(shot.LeanYRad));
        double[] turned = [ct, -st, 0, st, ct, 0, 0, 0, 1];
        double[] aboutY = [cx, 0, sx, 0, 1, 0, -sx, 0, cx];
        double[] aboutX = [1, 0, 0, 0, cy, -sy, 0, sy, cy];
        return Times(aboutX, Times(aboutY, turned));
    }

    private static double[] Times(double[] a, double[] b)
    {
        var c = new double[9];
        for (var i = 0; i < 9; i++)
            for (var k = 0; k < 3; k++) c[i] += a[i / 3 * 3 + k] * b[k * 3 + i % 3];
        return c;
    }

    // 4 to 3 as cameras have it, the long side where the sheet's is; a scanner's as the sheet.
    private static (int, int) Format(Shot shot, double widthMm, double heightMm)
    {
        var isTall = heightMm > widthMm != Math.Abs(Math.Sin(shot.TurnRad)) > .7;
        var ratio = shot.Table == Table.Scanner ? Math.Max(widthMm, heightMm) / Math.Min(widthMm, heightMm) : 4.0 / 3;
        var shorter = (int)Math.Sqrt(shot.MegapixelCount * 1e6 / ratio);
        var longer = (int)(shorter * ratio);
        return isTall ? (shorter, longer) : (longer, shorter);
    }

    private (double, double, double, double) Bounds()
    {
        var (left, top, right, bottom) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        for (var i = 0; i <= 8; i++)
            foreach (var (x, y) in new[] { (i / 8.0, 0.0), (i / 8.0, 1.0), (0.0, i / 8.0), (1.0, i / 8.0) })
            {
                var p = PxOf(x * 2 * _halfWidthMm, y * 2 * _halfHeightMm);
                (left, right) = (Math.Min(left, p.XPx), Math.Max(right, p.XPx));
                (top, bottom) = (Math.Min(top, p.YPx), Math.Max(bottom, p.YPx));
            }
        return (left, top, right, bottom);
    }
}
