using System.Threading.RateLimiting;
using Slantwise.Records.Floor;

namespace Slantwise.Host.Sync;

/// <summary>Makes guessing codes hopeless without hindering a class that mistypes them.</summary>
/// <remarks>
/// There are 28⁶ = 481,890,304 codes. One place has 60 wrong ones at once, two for each of a class of thirty, and then 2 in 10 s. In the 90 minutes that a code lasts that
/// is 60 + 1,080 = 1,140 guesses: with ten lessons open at once the chance to hit one is 10 · 1,140 / 481,890,304, 1 in 42,000. From many places together it is 600 at once and
/// 20 in 10 s, 11,400 guesses in 90 minutes, 1 in 4,200. Whoever hits one is a device more on the teacher's list.
/// </remarks>
internal sealed class WrongCodes : IDisposable
{
    private const string Everywhere = "everywhere";

    private readonly PartitionedRateLimiter<string> _limits = PartitionedRateLimiter.Create<string, string>(place => place == Everywhere
        ? RateLimitPartition.GetTokenBucketLimiter(place, _ => SyncLimits.Options(600, 20))
        : RateLimitPartition.GetTokenBucketLimiter(place, _ => SyncLimits.Options(60, 2)));

    /// <summary>Whether a place may try a code.</summary>
    /// <exception cref="FloorRefusal">Too many were wrong.</exception>
    public void Require(string place)
    {
        if (!IsLeft(place) || !IsLeft(Everywhere)) throw new FloorRefusal(FloorProblemKind.TooManyTries);
    }

    /// <summary>Counts a wrong code.</summary>
    public void Count(string place)
    {
        foreach (var counted in new[] { place, Everywhere })
        {
            using var lease = _limits.AttemptAcquire(counted);
        }
    }

    public void Dispose() => _limits.Dispose();

    // Not by asking for 0 permits: that is granted for the smallest part of one, and parts come back at any time.
    private bool IsLeft(string place) => _limits.GetStatistics(place) is not { CurrentAvailablePermits: <= 0 };
}
