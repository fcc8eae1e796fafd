using System.Text;

namespace Slantwise.Records.Csv;

/// <summary>A text file's bytes as text.</summary>
/// <param name="Text">The text, without a byte order mark.</param>
/// <param name="IsGuessed">Whether the bytes were no valid UTF-8 and were read as Windows-1252, so that accents should be looked at.</param>
public sealed record DecodedText(string Text, bool IsGuessed)
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads bytes as UTF-16 where they begin with its mark, else as UTF-8, else as Windows-1252 (what older spreadsheets write in the west).</summary>
    /// <param name="bytes">The whole file; may be empty.</param>
    /// <returns>Always a text: every byte has a meaning in Windows-1252.</returns>
    public static DecodedText Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])) return new(Encoding.Unicode.GetString(bytes[2..]), false);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])) return new(Encoding.BigEndianUnicode.GetString(bytes[2..]), false);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) bytes = bytes[3..];
        try
        {
            return new(StrictUtf8.GetString(bytes), false);
        }
        catch (DecoderFallbackException)
        {
            return new(CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes), true);
        }
    }
}
