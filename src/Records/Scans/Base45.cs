using System.Text;

namespace Slantwise.Records.Scans;

/// <summary>Bytes as the 45 characters a QR symbol packs densest. Source: [RFC9285].</summary>
internal static class Base45
{
    private const string Letters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

    public static string Write(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder((bytes.Length + 1) / 2 * 3);
        for (var i = 0; i + 1 < bytes.Length; i += 2)
        {
            var pair = bytes[i] << 8 | bytes[i + 1];
            text.Append(Letters[pair % 45]).Append(Letters[pair / 45 % 45]).Append(Letters[pair / (45 * 45)]);
        }
        if (bytes.Length % 2 == 1) text.Append(Letters[bytes[^1] % 45]).Append(Letters[bytes[^1] / 45]);
        return text.ToString();
    }

    /// <summary>None for a text that <see cref="Write"/> never makes.</summary>
    public static byte[]? Read(string text)
    {
        if (text.Length % 3 == 1) return null;
        var bytes = new List<byte>(text.Length / 3 * 2 + 1);
        for (var i = 0; i < text.Length; i += 3)
        {
            var (value, weight) = (0, 1);
            foreach (var letter in text.AsSpan(i, Math.Min(3, text.Length - i)))
            {
                var digit = Letters.IndexOf(letter, StringComparison.Ordinal);
                if (digit < 0) return null;
                value += digit * weight;
                weight *= 45;
            }
            var isPair = i + 3 <= text.Length;
            if (value > (isPair ? ushort.MaxValue : byte.MaxValue)) return null;
            if (isPair) bytes.Add((byte)(value >> 8));
            bytes.Add((byte)value);
        }
        return [.. bytes];
    }
}
