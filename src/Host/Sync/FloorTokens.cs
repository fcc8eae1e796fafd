using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.DataProtection;
using Slantwise.Records.Floor;

namespace Slantwise.Host.Sync;

/// <summary>What a device that joined shows with every request: signed, bound to it and its lesson, and of no use for anything else.</summary>
/// <param name="protection">The program's keys.</param>
/// <param name="clock">Dates the tokens.</param>
internal sealed class FloorTokens(IDataProtectionProvider protection, TimeProvider clock)
{
    /// <summary>A tablet may lie in a cupboard over the holidays of a week with entries still on it.</summary>
    public static readonly TimeSpan LastFor = TimeSpan.FromDays(14);

    private const int IdsByteCount = 32;

    private readonly ITimeLimitedDataProtector _protector = protection.CreateProtector("Slantwise.Floor.Device").ToTimeLimitedDataProtector();

    /// <summary>A token for a device in its lesson.</summary>
    public string Of(FloorMember member)
    {
        var (schoolId, lessonId) = member.Of;
        var bytes = new byte[IdsByteCount + Encoding.UTF8.GetByteCount(member.DeviceId)];
        schoolId.TryWriteBytes(bytes);
        lessonId.TryWriteBytes(bytes.AsSpan(16));
        Encoding.UTF8.GetBytes(member.DeviceId, bytes.AsSpan(IdsByteCount));
        return Base64Url.EncodeToString(_protector.Protect(bytes, clock.GetUtcNow() + LastFor));
    }

    /// <summary>Whose a token is; none for a text that is no token of ours, or one that has run out.</summary>
    public (Guid SchoolId, Guid LessonId, string DeviceId)? Read(string token)
    {
        try
        {
            var bytes = _protector.Unprotect(Base64Url.DecodeFromChars(token)).AsSpan();
            if (bytes.Length <= IdsByteCount) return null;
            return (new Guid(bytes[..16]), new Guid(bytes[16..IdsByteCount]), Encoding.UTF8.GetString(bytes[IdsByteCount..]));
        }
        catch (Exception failure) when (failure is CryptographicException or FormatException)
        {
            return null;
        }
    }
}
