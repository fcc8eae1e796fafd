using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>How a simulated pupil chooses a level and decides after a set.</summary>
internal sealed partial class SimulatedPupil
{
    // How wide around the success share a pupil looks for levels still look good.
    private const double TasteWidthFraction = 0.15;

    // What a first look at a level is wrong by.
    private const double ImpressionSdLogits = 0.5;

    // Where a result says "easier" as loudly as "harder", and how fast it gets louder.
    private const double TurningFraction = 0.6;
    private const double TurningLogits = 8;

    // Clear results, far from the turning point, lead to changes more often. Results lie 0.25 from it on average; the smaller distance here makes
    // up for those who would change but stand at the end of the ladder, so that the overall share is about the plan's.
    private const double ClearnessLogits = 3;
    private const double UsualDistanceFraction = 0.17;

    /// <summary>The level to begin a task with.</summary>
    private Level Enter(SheetTask task, IReadOnlyList<Level> offered)
    {
        var isSteady = _draws.Happens(_self.SteadinessFraction);
        if (_nextLevels.TryGetValue(task.TaskId, out var meant) && isSteady && offered.FirstOrDefault(l => l.Id == meant) is { } known)
        {
            return known;
        }
        var weights = offered.Select(Appeal).ToList();
        return isSteady ? offered[weights.IndexOf(weights.Max())] : offered[_draws.NextWeighted(weights)];
    }

    private double Appeal(Level level)
    {
        var distance = (PortableMath.Logistic(BelievedLogits(level)) - _self.TasteFraction) / TasteWidthFraction;
        return PortableMath.Exp(_truth.Level(level.Id).PullLogits - (distance * distance / 2));
    }

    /// <summary>What the pupil believes the log odds of success to be.</summary>
    private double BelievedLogits(Level level)
    {
        if (!_impressions.TryGetValue(level.Id, out var impression))
        {
            impression = _draws.NextNormal(0, ImpressionSdLogits);
            _impressions[level.Id] = impression;
        }
        return SuccessLogits(level) + _self.BiasLogits + impression;
    }

    /// <summary>The decision after a set and the level it leads to.</summary>
    private (NextLevel Next, Level Level) Decide(IReadOnlyList<Level> offered, Level level, double successFraction)
    {
        var isChanging = _draws.Happens(ChangeChanceFraction(successFraction));
        var isUp = _draws.Happens(PortableMath.Logistic(TurningLogits * (successFraction - TurningFraction)));
        var index = offered.ToList().FindIndex(l => l.Id == level.Id);
        var ahead = isUp ? offered.Skip(index + 1).ToList() : offered.Take(index).Reverse().ToList();
        // The next one first; those further on, and those without pull, are rarely jumped to.
        var weights = ahead.Select((l, i) => PortableMath.Exp(_truth.Level(l.Id).PullLogits - (1.5 * i))).ToList();
        var reached = _draws.NextFraction();
        if (!isChanging || weights.Sum() < 1e-9) return (NextLevel.Same, level);

        var i = 0;
        for (var left = (reached * weights.Sum()) - weights[0]; left >= 0 && i < weights.Count - 1; left -= weights[i]) i++;
        return (isUp ? NextLevel.Harder : NextLevel.Easier, ahead[i]);
    }

    private double ChangeChanceFraction(double successFraction)
    {
        if (_self.ChangeFraction is <= 0 or >= 1) return _self.ChangeFraction;
        var clearness = Math.Abs(successFraction - TurningFraction) - UsualDistanceFraction;
        return PortableMath.Logistic(PortableMath.Logit(_self.ChangeFraction) + (ClearnessLogits * clearness));
    }
}
