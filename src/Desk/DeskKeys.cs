using System.Buffers.Text;
using System.Collections.Concurrent;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace Slantwise.Desk;

/// <summary>Lets a second device of the teacher open the desk over the network: a link that works once, and a cookie that it gives.</summary>
/// <param name="protection">The program's keys.</param>
/// <param name="clock">Dates links and cookies.</param>
public sealed class DeskKeys(IDataProtectionProvider protection, TimeProvider clock)
{
    /// <summary>The cookie that opens the desk.</summary>
    public const string Cookie = "slantwise-desk";

    /// <summary>The page that a link leads to.</summary>
    public const string Path = "/desk-key";

    /// <summary>How long a link waits to be opened.</summary>
    public static readonly TimeSpan LinkLasts = TimeSpan.FromMinutes(10);

    /// <summary>How long the cookie opens the desk: a school day.</summary>
    public static readonly TimeSpan CookieLasts = TimeSpan.FromHours(12);

    private const int NonceByteCount = 16;

    private readonly ITimeLimitedDataProtector _links = protection.CreateProtector("Slantwise.Desk.Link").ToTimeLimitedDataProtector();
    private readonly ITimeLimitedDataProtector _cookies = protection.CreateProtector("Slantwise.Desk.Cookie").ToTimeLimitedDataProtector();
    private readonly ConcurrentDictionary<string, DateTimeOffset> _used = [];

    /// <summary>A new link, without the program's address.</summary>
    public string NewLink() => $"{Path}?k={Signed(_links, LinkLasts)}";

    /// <summary>Uses a link up.</summary>
    /// <param name="key">What it carries.</param>
    /// <returns>What the cookie holds; none for a key that is none of ours, has run out or was used.</returns>
    public string? Use(string? key)
    {
        var now = clock.GetUtcNow();
        foreach (var old in _used.Where(u => u.Value < now)) _used.TryRemove(old);
        return key is not null && Nonce(_links, key) is { } nonce && _used.TryAdd(nonce, now + LinkLasts) ? Signed(_cookies, CookieLasts) : null;
    }

    /// <summary>Whether a cookie opens the desk.</summary>
    /// <param name="cookie">What it holds; none where there is none.</param>
    public bool Opens(string? cookie) => cookie is not null && Nonce(_cookies, cookie) is not null;

    private string Signed(ITimeLimitedDataProtector protector, TimeSpan lasts) =>
        Base64Url.EncodeToString(protector.Protect(RandomNumberGenerator.GetBytes(NonceByteCount), clock.GetUtcNow() + lasts));

    private static string? Nonce(ITimeLimitedDataProtector protector, string text)
    {
        try
        {
            return Convert.ToHexString(protector.Unprotect(Base64Url.DecodeFromChars(text)));
        }
        catch (Exception failure) when (failure is CryptographicException or FormatException)
        {
            return null;
        }
    }
}
