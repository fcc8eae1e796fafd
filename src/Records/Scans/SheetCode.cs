using System.Buffers.Binary;
using System.Security.Cryptography;

namespace Slantwise.Records.Scans;

/// <summary>What a printed form's code says: which lesson, pupil, sheet version, page and layout. No name is in it.</summary>
/// <param name="LessonTag">Of the lesson with its sheet, by <see cref="LessonTagOf"/>.</param>
/// <param name="PupilTag">Of the pupil, by <see cref="TagOf(Guid)"/>; on a sheet without a name its number in the pile, from 1; on an observation sheet 0.</param>
/// <param name="IsNamed">Whether the pupil is known.</param>
/// <param name="SheetVersion">The sheet's version, 1 to 65 535.</param>
/// <param name="PageNumber">The page of this pupil's sheet, from 1, at most 255.</param>
/// <param name="LayoutTag">Of the form's layout.</param>
public sealed record SheetCode(long LessonTag, long PupilTag, bool IsNamed, int SheetVersion, int PageNumber, long LayoutTag)
{
    /// <summary>The bytes of a code, its check included.</summary>
    public const int ByteCount = 23;

    private const int TagByteCount = 5;
    private const int CheckByteCount = 4;

    // The upper half of the first byte: how the code is made. A code made otherwise is another program's, or a later one's.
    private const byte Making = 0x10;

    /// <summary>A short tag of an id, 40 bits: enough among one school's lessons or pupils, and it tells nothing.</summary>
    public static long TagOf(Guid id)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(id.ToByteArray(), hash);
        return TagAt(hash);
    }

    /// <summary>A short tag of a lesson with the sheet it uses, 40 bits: what was printed before it was given another sheet is not taken for that one.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="sheetId">Its sheet.</param>
    public static long LessonTagOf(Guid lessonId, Guid sheetId) => TagOf([.. lessonId.ToByteArray(), .. sheetId.ToByteArray()]);

    /// <summary>A short tag of a text, 40 bits.</summary>
    public static long TagOf(ReadOnlySpan<byte> text)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(text, hash);
        return TagAt(hash);
    }

    /// <summary>The code as text for a QR symbol in its alphanumeric mode.</summary>
    /// <param name="schoolId">The school, which goes into the check and not into the code.</param>
    /// <exception cref="InvalidOperationException">A version or page outside its range.</exception>
    public string Write(Guid schoolId)
    {
        if (SheetVersion is < 1 or > ushort.MaxValue || PageNumber is < 1 or > byte.MaxValue)
            throw new InvalidOperationException($"Version {SheetVersion}, page {PageNumber}: a version is 1 to 65 535, a page 1 to 255.");
        var bytes = new byte[ByteCount];
        bytes[0] = (byte)(Making | (IsNamed ? 1 : 0));
        PutTag(LessonTag, bytes.AsSpan(1));
        PutTag(PupilTag, bytes.AsSpan(1 + TagByteCount));
        BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(11), (ushort)SheetVersion);
        bytes[13] = (byte)PageNumber;
        PutTag(LayoutTag, bytes.AsSpan(14));
        Check(schoolId, bytes).CopyTo(bytes.AsSpan(ByteCount - CheckByteCount));
        return Base45.Write(bytes);
    }

    /// <summary>Reads a code back.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="schoolId">The school whose sheets are read.</param>
    /// <returns>None for another school's code, a damaged one, and any other text.</returns>
    public static SheetCode? Read(string text, Guid schoolId)
    {
        if (Base45.Read(text) is not { Length: ByteCount } bytes || (bytes[0] & 0xFE) != Making) return null;
        if (!CryptographicOperations.FixedTimeEquals(Check(schoolId, bytes), bytes.AsSpan(ByteCount - CheckByteCount))) return null;
        var code = new SheetCode(
            TagAt(bytes.AsSpan(1)), TagAt(bytes.AsSpan(1 + TagByteCount)), (bytes[0] & 1) == 1,
            BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(11)), bytes[13], TagAt(bytes.AsSpan(14)));
        return code.SheetVersion > 0 && code.PageNumber > 0 ? code : null;
    }

    /// <summary>Whether a text is made like a sheet's code, of whichever school.</summary>
    /// <param name="text">Any text.</param>
    public static bool IsSheets(string text) => Base45.Read(text) is { Length: ByteCount } bytes && (bytes[0] & 0xFE) == Making;

    private static ReadOnlySpan<byte> Check(Guid schoolId, byte[] bytes) =>
        HMACSHA256.HashData(schoolId.ToByteArray(), bytes.AsSpan(0, ByteCount - CheckByteCount)).AsSpan(0, CheckByteCount);

    private static void PutTag(long tag, Span<byte> place)
    {
        for (var i = TagByteCount - 1; i >= 0; i--, tag >>= 8) place[i] = (byte)tag;
    }

    private static long TagAt(ReadOnlySpan<byte> place)
    {
        var tag = 0L;
        foreach (var b in place[..TagByteCount]) tag = tag << 8 | b;
        return tag;
    }
}
