using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;
using ZXing;
using ZXing.QrCode;

namespace Slantwise.Bench.Piles;

/// <summary>A form of 120 fields on A4, and photos of it on a table: turned a little, grainy, filled in.</summary>
internal static class InventedForm
{
    public static readonly Guid School = new("01990000-0000-7000-8000-00000000aa01");

    public static SheetLayout Layout()
    {
        var fields = new List<MarkField>();
        for (var set = 1; set <= 3; set++)
        {
            for (var trial = 1; trial <= 10; trial++)
            {
                Add(new SheetField(SheetFieldKind.Held, 1, set, trial), trial, set, 0);
                Add(new SheetField(SheetFieldKind.NotYet, 1, set, trial), trial, set, 1);
                Add(new SheetField(SheetFieldKind.Predicted, 1, set, trial), trial, set, 2);
                Add(new SheetField(SheetFieldKind.Cue, 1, set, trial), trial, set, 3);
            }
        }
        List<Anchor> anchors = [new(9, 9, 5, IsHollow: true), new(201, 9, 5), new(201, 288, 5), new(9, 288, 5)];
        foreach (var fraction in new[] { 0.25, 0.5, 0.75 })
        {
            anchors.Add(new(9, 297 * fraction, 2.5));
            anchors.Add(new(201, 297 * fraction, 2.5));
        }
        return new SheetLayout(210, 297, anchors, new CodePlace(175, 262, 20), fields, []);

        void Add(SheetField field, int column, int set, int row) =>
            fields.Add(new MarkField(field.Key, field.Group, 20 + column * 14, 30 + (set - 1) * 70 + row * 14, 5.5, 5.5, field.Kind == SheetFieldKind.Predicted));
    }

    public static byte[] Photo(SheetLayout layout, int seed)
    {
        var random = new Random(seed);
        using var bitmap = new SKBitmap(4000, 3000, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(new SKColor(95, 75, 60));
            // Held sideways, as phones are: 12.6 pixels a millimetre.
            canvas.Translate(2000, 1500);
            canvas.RotateDegrees(90 + (float)(random.NextDouble() * 6 - 3));
            canvas.Scale(12.6f);
            canvas.Translate(-105, -148.5f);
            Draw(canvas, layout, random);
        }
        var pixels = bitmap.GetPixelSpan();
        for (var i = 0; i < pixels.Length; i += 4)
        {
            var grain = random.Next(-9, 10);
            for (var c = 0; c < 3; c++) pixels[i + c] = (byte)Math.Clamp(pixels[i + c] + grain, 0, 255);
        }
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        return data.ToArray();
    }

    private static void Draw(SKCanvas canvas, SheetLayout layout, Random random)
    {
        using SKPaint paper = new() { Color = new SKColor(228, 226, 220) }, ink = new() { Color = new SKColor(40, 40, 45), IsAntialias = true };
        using SKPaint outline = new() { Color = new SKColor(75, 75, 80), IsAntialias = true, IsStroke = true, StrokeWidth = 0.3f };
        using SKPaint pencil = new() { Color = new SKColor(85, 85, 90), IsAntialias = true, IsStroke = true, StrokeWidth = 0.6f };
        canvas.DrawRect(0, 0, 210, 297, paper);
        foreach (var a in layout.Anchors)
        {
            var half = (float)a.SizeMm / 2;
            canvas.DrawRect((float)a.XMm - half, (float)a.YMm - half, 2 * half, 2 * half, ink);
            if (a.IsHollow) canvas.DrawRect((float)a.XMm - half / 2, (float)a.YMm - half / 2, half, half, paper);
        }
        foreach (var f in layout.Fields)
        {
            var box = SKRect.Create((float)f.XMm, (float)f.YMm, (float)f.WidthMm, (float)f.HeightMm);
            if (f.IsRound) canvas.DrawOval(box, outline);
            else canvas.DrawRect(box, outline);
            if (random.Next(3) > 0) continue;
            canvas.DrawLine(box.Left + 1, box.MidY, box.MidX - 0.4f, box.Bottom - 1, pencil);
            canvas.DrawLine(box.MidX - 0.4f, box.Bottom - 1, box.Right - 0.6f, box.Top + 0.8f, pencil);
        }
        var text = new SheetCode(1, random.Next(1, 1_000_000), true, 1, 1, 5).Write(School);
        var modules = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = 0 });
        var module = (float)layout.Code.SizeMm / modules.Width;
        for (var y = 0; y < modules.Height; y++)
            for (var x = 0; x < modules.Width; x++)
                if (modules[x, y]) canvas.DrawRect((float)layout.Code.XMm + x * module, (float)layout.Code.YMm + y * module, module, module, ink);
    }
}
