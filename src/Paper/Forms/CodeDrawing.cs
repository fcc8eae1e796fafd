using Slantwise.Engines.Drawing;
using Slantwise.Engines.Marks;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;
using ZXing.QrCode.Internal;

namespace Slantwise.Paper.Forms;

/// <summary>A code as a QR symbol, drawn as one outline of as few boxes as its rows and columns make.</summary>
/// <remarks>
/// Source: [ISO18004]: model 2, error correction M. A form's code is in alphanumeric mode: 38 characters in version 2 of 25 modules a side; an address with
/// small letters is in byte mode: 42 in version 3 of 29.
/// </remarks>
internal static class CodeDrawing
{
    // Source: [ISO18004] 5.3.8.
    private const int QuietModuleCount = 4;

    /// <summary>How wide the white on each side of a symbol is, of the symbol with its white.</summary>
    public static double QuietFraction(string text) => (double)QuietModuleCount / (Modules(text).Width + 2 * QuietModuleCount);

    public static Outline Of(string text, CodePlace place)
    {
        var modules = Modules(text);
        var module = place.SizeMm / modules.Width;
        var pen = new Pen();
        foreach (var (left, top, right, bottom) in Boxes(modules))
        {
            double X(int at) => place.XMm + at * module;
            double Y(int at) => place.YMm + at * module;
            pen.MoveTo(X(left), Y(top)).LineTo(X(right), Y(top)).LineTo(X(right), Y(bottom)).LineTo(X(left), Y(bottom)).Close();
        }
        return pen.Fill(Tone.Ink);
    }

    private static BitMatrix Modules(string text) => new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, new Dictionary<EncodeHintType, object>
    {
        [EncodeHintType.ERROR_CORRECTION] = ErrorCorrectionLevel.M,
        [EncodeHintType.MARGIN] = 0,
    });

    // A run of dark modules, as far down as the same run goes on.
    private static IEnumerable<(int Left, int Top, int Right, int Bottom)> Boxes(BitMatrix modules)
    {
        var isDrawn = new bool[modules.Width, modules.Height];
        for (var y = 0; y < modules.Height; y++)
        {
            for (var x = 0; x < modules.Width; x++)
            {
                if (isDrawn[x, y] || !modules[x, y]) continue;
                var right = x;
                while (right < modules.Width && modules[right, y] && !isDrawn[right, y]) right++;
                var bottom = y + 1;
                while (bottom < modules.Height && Enumerable.Range(x, right - x).All(i => modules[i, bottom] && !isDrawn[i, bottom])) bottom++;
                for (var row = y; row < bottom; row++)
                    for (var column = x; column < right; column++) isDrawn[column, row] = true;
                yield return (x, y, right, bottom);
            }
        }
    }
}
