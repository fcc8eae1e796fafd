using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Slantwise.Records.Floor;

namespace Slantwise.Host.Sync;

/// <summary>How often one may ask.</summary>
internal static class SyncLimits
{
    /// <summary>The policy of joining, by address.</summary>
    public const string Join = "floor-join";

    /// <summary>The policy of everything a device asks afterwards, by its token.</summary>
    public const string Device = "floor-device";

    // A school's devices stand behind one address: four classes of thirty that join at once, and then one a second.
    private const int JoinBurstCount = 120;
    private const int JoinsPerPeriod = 10;

    // A device sends a batch when something was done, and after hours without a network two hundred entries at a time: a minute's worth at once, then four a second.
    private const int DeviceBurstCount = 120;
    private const int DevicePerPeriod = 40;

    private static readonly TimeSpan Period = TimeSpan.FromSeconds(10);

    public static void AddSyncLimits(this IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.AddPolicy(Join, http => Bucket(PlaceOf(http), JoinBurstCount, JoinsPerPeriod));
        options.AddPolicy(Device, http => Bucket(http.Request.Headers.Authorization.ToString(), DeviceBurstCount, DevicePerPeriod));
        options.OnRejected = async (rejected, _) => await FloorProblems.WriteAsync(rejected.HttpContext, FloorProblemKind.TooOften);
    });

    /// <summary>Where a request comes from: an address; for IPv6 the network, since one machine has as many addresses as it likes.</summary>
    public static string PlaceOf(HttpContext http)
    {
        if (http.Connection.RemoteIpAddress is not { } address) return "";
        if (address.IsIPv4MappedToIPv6) address = address.MapToIPv4();
        return address.AddressFamily == AddressFamily.InterNetworkV6 ? new IPAddress([.. address.GetAddressBytes()[..8], .. new byte[8]]).ToString() : address.ToString();
    }

    public static TokenBucketRateLimiterOptions Options(int burstCount, int perPeriod) => new()
    {
        TokenLimit = burstCount,
        TokensPerPeriod = perPeriod,
        ReplenishmentPeriod = Period,
        QueueLimit = 0,
    };

    private static RateLimitPartition<string> Bucket(string key, int burstCount, int perPeriod) =>
        RateLimitPartition.GetTokenBucketLimiter(key, _ => Options(burstCount, perPeriod));
}
