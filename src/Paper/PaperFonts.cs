using Slantwise.Engines.Drawing;
using SkiaSharp;

namespace Slantwise.Paper;

/// <summary>The one type family of our paper and pages, Atkinson Hyperlegible Next, in two weights.</summary>
/// <remarks>Under the SIL Open Font License 1.1; its text travels with the files.</remarks>
public static class PaperFonts
{
    private static readonly Lazy<byte[]> RegularFile = new(() => Read("Fonts.Regular.ttf"));
    private static readonly Lazy<byte[]> BoldFile = new(() => Read("Fonts.Bold.ttf"));
    private static readonly Lazy<SKTypeface> RegularFace = new(() => Face(RegularFile.Value));
    private static readonly Lazy<SKTypeface> BoldFace = new(() => Face(BoldFile.Value));

    /// <summary>The regular weight, a TrueType file.</summary>
    public static ReadOnlyMemory<byte> Regular => RegularFile.Value;

    /// <summary>The bold weight, a TrueType file.</summary>
    public static ReadOnlyMemory<byte> Bold => BoldFile.Value;

    /// <summary>The licence both come under, plain text.</summary>
    public static string Licence { get; } = System.Text.Encoding.UTF8.GetString(Read("Fonts.Licence.txt"));

    /// <summary>Whether the family has every character of a text; where it has not, paper would show an empty box.</summary>
    /// <param name="text">Any text.</param>
    public static bool Has(string text)
    {
        using var font = new SKFont(RegularFace.Value);
        return font.ContainsGlyphs(Printable.Of(text));
    }

    internal static SKTypeface Of(TextWeight weight) => weight == TextWeight.Bold ? BoldFace.Value : RegularFace.Value;

    private static SKTypeface Face(byte[] file) => SKTypeface.FromData(SKData.CreateCopy(file));

    private static byte[] Read(string name)
    {
        using var stream = typeof(PaperFonts).Assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
