using System.Globalization;
using System.Text;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>A rastered page in grey, measured in millimetres.</summary>
internal sealed class GreyPage
{
    private readonly byte[] _pixels;
    private readonly int _width;
    private readonly double _pxPerMm;

    private GreyPage(byte[] pixels, int width, double pxPerMm) => (_pixels, _width, _pxPerMm) = (pixels, width, pxPerMm);

    /// <summary>How much of the page is as dark as the darkest print of our ink, in square millimetres.</summary>
    public double InkMm2 => _pixels.Sum(p => (255.0 - p) / (255 - Darkest)) / (_pxPerMm * _pxPerMm);

    /// <summary>The grey of a place, 0 for black, 255 for paper.</summary>
    public int GreyAt(double xMm, double yMm) => _pixels[(int)(yMm * _pxPerMm) * _width + (int)(xMm * _pxPerMm)];

    /// <summary>A square of the page, row by row.</summary>
    public (byte[] Pixels, int WidthPx, int HeightPx) Cut(double leftMm, double topMm, double sizeMm)
    {
        var (left, top, size) = ((int)(leftMm * _pxPerMm), (int)(topMm * _pxPerMm), (int)(sizeMm * _pxPerMm));
        return ([.. Enumerable.Range(top, size).SelectMany(y => _pixels[(y * _width + left)..(y * _width + left + size)])], size, size);
    }

    private int Darkest => _pixels.Min() is var d && d < 250 ? d : 0;

    // A binary grey map: "P5", width, height, deepest value, one white space, then a byte a pixel.
    public static GreyPage Read(string file, double dpi)
    {
        var bytes = File.ReadAllBytes(file);
        var words = new List<string>();
        var at = 0;
        while (words.Count < 4)
        {
            var word = new StringBuilder();
            while (!char.IsWhiteSpace((char)bytes[at])) word.Append((char)bytes[at++]);
            at++;
            words.Add(word.ToString());
        }
        Assert.Equal("P5", words[0]);
        return new GreyPage(bytes[at..], int.Parse(words[1], CultureInfo.InvariantCulture), dpi / 25.4);
    }

    /// <summary>The middle of what is dark from 1 mm before one place to 1 mm after another, on the line through the other coordinate.</summary>
    public double DarkMiddleMm(double fromMm, double toMm, double throughMm, bool isVertical)
    {
        var through = (int)(throughMm * _pxPerMm);
        double weight = 0, sum = 0;
        for (var i = (int)((fromMm - 1) * _pxPerMm); i <= (int)((toMm + 1) * _pxPerMm); i++)
        {
            var ink = 255 - _pixels[isVertical ? through * _width + i : i * _width + through];
            weight += ink;
            sum += ink * (i + 0.5);
        }
        // As wide as it should be, to a tenth.
        Assert.Equal(toMm - fromMm, weight / (255 - Darkest) / _pxPerMm, 0.1);
        return sum / weight / _pxPerMm;
    }

    /// <summary>The middle of the dark stroke within 0.8 mm of where an edge is expected, on the line through the other coordinate.</summary>
    public double EdgeAcrossMm(double expectedMm, double throughMm, bool isVertical)
    {
        var (from, to) = ((int)((expectedMm - 0.8) * _pxPerMm), (int)((expectedMm + 0.8) * _pxPerMm));
        var through = (int)(throughMm * _pxPerMm);
        double weight = 0, sum = 0;
        for (var i = from; i <= to; i++)
        {
            var ink = 255 - _pixels[isVertical ? through * _width + i : i * _width + through];
            weight += ink;
            sum += ink * (i + 0.5);
        }
        Assert.True(weight > 100, $"There is no edge near {expectedMm} mm.");
        return sum / weight / _pxPerMm;
    }
}
