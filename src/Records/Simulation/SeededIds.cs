using System.Buffers.Binary;

namespace Slantwise.Records.Simulation;

/// <summary>UUIDv7 whose random bits come from a seed, so that a simulation gives the same ids every time.</summary>
/// <remarks>Source: [RFC9562] section 5.7.</remarks>
internal sealed class SeededIds(Draws draws)
{
    /// <summary>The next id, dated.</summary>
    public Guid At(DateTimeOffset instant)
    {
        Span<byte> bytes = stackalloc byte[16];
        var version = 0x7000UL | draws.NextBits(12);
        BinaryPrimitives.WriteUInt64BigEndian(bytes, ((ulong)instant.ToUnixTimeMilliseconds() << 16) | version);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[8..], (0b10UL << 62) | draws.NextBits(62));
        return new Guid(bytes, bigEndian: true);
    }
}
