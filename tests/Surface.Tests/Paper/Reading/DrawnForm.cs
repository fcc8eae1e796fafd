using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;
using ZXing;
using ZXing.QrCode;
using ZXing.QrCode.Internal;

namespace Slantwise.Surface.Tests.Paper.Reading;

/// <summary>A small form drawn straight into pixels, so that the reading is tested without the printing.</summary>
internal static class DrawnForm
{
    public static readonly Guid School = new("01990000-0000-7000-8000-00000000aa01");

    /// <summary>A portrait A4 form: per set a row of levels, trials of two fields, next; one line for words at the foot.</summary>
    public static SheetLayout Layout(int setCount = 2, int levelCount = 4, int trialCount = 4)
    {
        var fields = new List<MarkField>();
        for (var set = 1; set <= setCount; set++)
        {
            var y = 40.0 + (set - 1) * 60;
            for (var level = 1; level <= levelCount; level++) Add(new SheetField(SheetFieldKind.Level, 1, set, level), 25 + level * 12, y, isRound: true);
            for (var trial = 1; trial <= trialCount; trial++)
            {
                Add(new SheetField(SheetFieldKind.Held, 1, set, trial), 25 + trial * 18, y + 15, isRound: false);
                Add(new SheetField(SheetFieldKind.NotYet, 1, set, trial), 33 + trial * 18, y + 15, isRound: false);
            }
            for (var next = 1; next <= 3; next++) Add(new SheetField(SheetFieldKind.Next, 1, set, next), 25 + next * 20, y + 30, isRound: true);
        }
        List<Anchor> anchors = [new(9, 9, 5, IsHollow: true), new(201, 9, 5), new(201, 288, 5), new(9, 288, 5)];
        foreach (var fraction in new[] { 0.25, 0.5, 0.75 })
        {
            anchors.Add(new(9, 297 * fraction, 2.5));
            anchors.Add(new(201, 297 * fraction, 2.5));
        }
        return new SheetLayout(210, 297, anchors, new CodePlace(175, 262, 20), fields, [new WrittenField(new SheetField(SheetFieldKind.OwnWords).Key, 25, 200, 120, 20)]);

        void Add(SheetField field, double x, double y, bool isRound) => fields.Add(new MarkField(field.Key, field.Group, x, y, 5.5, 5.5, isRound));
    }

    public static SheetCode Code(long layoutTag = 5, long pupilTag = 77, bool isNamed = true, int page = 1) => new(11, pupilTag, isNamed, 1, page, layoutTag);

    /// <summary>The form on white, marked with crosses.</summary>
    public static SKBitmap Draw(SheetLayout layout, string? code, IReadOnlyCollection<string> marked, float pxPerMm = 8)
    {
        var bitmap = new SKBitmap((int)(layout.WidthMm * pxPerMm), (int)(layout.HeightMm * pxPerMm), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        DrawOn(canvas, layout, code, marked, pxPerMm);
        return bitmap;
    }

    public static void DrawOn(SKCanvas canvas, SheetLayout layout, string? code, IReadOnlyCollection<string> marked, float pxPerMm)
    {
        canvas.Save();
        canvas.Scale(pxPerMm);
        using var ink = new SKPaint { Color = new SKColor(30, 30, 35), IsAntialias = true };
        using var outline = new SKPaint { Color = new SKColor(60, 60, 65), IsAntialias = true, IsStroke = true, StrokeWidth = 0.3f };
        using var pen = new SKPaint { Color = new SKColor(40, 45, 90), IsAntialias = true, IsStroke = true, StrokeWidth = 0.6f };
        foreach (var a in layout.Anchors)
        {
            var half = (float)a.SizeMm / 2;
            canvas.DrawRect((float)a.XMm - half, (float)a.YMm - half, 2 * half, 2 * half, ink);
            using var white = new SKPaint { Color = SKColors.White };
            if (a.IsHollow) canvas.DrawRect((float)a.XMm - half / 2, (float)a.YMm - half / 2, half, half, white);
        }
        foreach (var f in layout.Fields)
        {
            var box = new SKRect((float)f.XMm, (float)f.YMm, (float)(f.XMm + f.WidthMm), (float)(f.YMm + f.HeightMm));
            if (f.IsRound) canvas.DrawOval(box, outline);
            else canvas.DrawRect(box, outline);
            if (!marked.Contains(f.Key)) continue;
            canvas.DrawLine(box.Left + 1, box.Top + 1, box.Right - 1, box.Bottom - 1, pen);
            canvas.DrawLine(box.Left + 1, box.Bottom - 1, box.Right - 1, box.Top + 1, pen);
        }
        if (code is not null) DrawCode(canvas, code, (float)layout.Code.XMm, (float)layout.Code.YMm, (float)layout.Code.SizeMm);
        canvas.Restore();
    }

    public static void DrawCode(SKCanvas canvas, string text, float x, float y, float side)
    {
        var modules = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, new Dictionary<EncodeHintType, object>
        {
            [EncodeHintType.MARGIN] = 0,
            [EncodeHintType.ERROR_CORRECTION] = ErrorCorrectionLevel.M,
        });
        using var ink = new SKPaint { Color = new SKColor(25, 25, 30) };
        var module = side / modules.Width;
        for (var j = 0; j < modules.Height; j++)
            for (var i = 0; i < modules.Width; i++)
                if (modules[i, j]) canvas.DrawRect(x + i * module, y + j * module, module, module, ink);
    }

    public static byte[] Jpeg(SKBitmap bitmap, int quality = 88) => Encoded(bitmap, SKEncodedImageFormat.Jpeg, quality);

    public static byte[] Png(SKBitmap bitmap) => Encoded(bitmap, SKEncodedImageFormat.Png, 100);

    private static byte[] Encoded(SKBitmap bitmap, SKEncodedImageFormat format, int quality)
    {
        using var data = bitmap.Encode(format, quality);
        return data.ToArray();
    }

    /// <summary>A JPEG with a note beside it of how the camera was held, as cameras write it: an Exif block with the one entry 0x0112.</summary>
    public static byte[] WithOrientation(byte[] jpeg, int orientation)
    {
        byte[] block =
        [
            0xFF, 0xE1, 0, 34, (byte)'E', (byte)'x', (byte)'i', (byte)'f', 0, 0, (byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8,
            0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0,
        ];
        return [.. jpeg.AsSpan(0, 2), .. block, .. jpeg.AsSpan(2)];
    }
}
