using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Live;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Results;

/// <summary>What the entries so far say about a pupil at one level.</summary>
/// <param name="TaskName">The task.</param>
/// <param name="LevelNumber">The level as the sheet numbers it.</param>
/// <param name="Level">The level.</param>
/// <param name="OfTenCount">Of ten tries, about how many would succeed.</param>
/// <param name="LowTenthsCount">Where the range begins.</param>
/// <param name="HighTenthsCount">Where it ends.</param>
/// <param name="Dots">The range as ten dots; the words beside it say the same.</param>
/// <param name="IsFew">Whether there are not enough tries yet: more of it is assumed, or comes from others, than was seen of this pupil.</param>
/// <param name="Today">How this lesson's tries at this level lie to the range.</param>
/// <param name="TodayShare">Those tries.</param>
/// <param name="HereCount">Tries of this pupil at this level in all lessons.</param>
/// <param name="AllCount">Tries of this pupil in all lessons.</param>
public sealed record LiveLevel(
    string TaskName, int LevelNumber, Level Level, int OfTenCount, int LowTenthsCount, int HighTenthsCount, Scene Dots, bool IsFew, TodaysTries Today,
    SuccessShare TodayShare, int HereCount, int AllCount)
{
    private const double DotMm = 2.6;

    /// <summary>A level as it stands.</summary>
    /// <param name="taskName">The task.</param>
    /// <param name="levelNumber">The level as the sheet numbers it.</param>
    /// <param name="level">The level.</param>
    /// <param name="chance">The pupil's chance there.</param>
    /// <param name="today">This lesson's tries there.</param>
    /// <param name="allCount">Tries of this pupil in all lessons.</param>
    public static LiveLevel Of(string taskName, int levelNumber, Level level, SuccessChance chance, SuccessShare today, int allCount)
    {
        var (low, high) = chance.Range(SuccessShare.RangeConfidenceFraction);
        var (lowTenths, highTenths) = DotsOfTen.TenthsOf(low, high);
        var about = Math.Clamp(chance.ChanceFraction, low, high);
        var isFew = allCount < SuccessShare.EnoughTrialCount || chance.Logit.Cautions.HasFlag(ResponseCaution.MostlyAssumption);
        return new(
            taskName, levelNumber, level, DotsOfTen.AboutOf(about, low, high), lowTenths, highTenths, DotsOfTen.Of(about, low, high, DotMm, isFew, ""), isFew,
            TriesBesideRange.Of(today.SuccessCount, today.TrialCount, low, high), today, chance.TrialCount, allCount);
    }
}
