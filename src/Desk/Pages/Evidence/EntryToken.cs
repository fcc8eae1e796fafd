using System.Buffers.Text;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>An entry's id shortened for an address: hundreds of them must fit into one.</summary>
/// <remarks>The last 6 bytes of a UUIDv7 are random: among 10,000 entries two alike come about once in 5 million times, and then one entry too many is listed.</remarks>
public static class EntryToken
{
    /// <summary>Characters of a token.</summary>
    public const int Length = 8;

    /// <summary>The token of an entry.</summary>
    /// <param name="entryId">The entry's id.</param>
    public static string Of(Guid entryId)
    {
        Span<byte> bytes = stackalloc byte[16];
        entryId.TryWriteBytes(bytes, bigEndian: true, out _);
        return Base64Url.EncodeToString(bytes[10..]);
    }

    /// <summary>The tokens of a text that holds them one after another.</summary>
    /// <param name="text">Any text; an incomplete token at its end is passed over.</param>
    public static IReadOnlySet<string> Read(string text) =>
        Enumerable.Range(0, text.Length / Length).Select(i => text.Substring(i * Length, Length)).ToHashSet(StringComparer.Ordinal);
}
