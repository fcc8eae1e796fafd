using System.Globalization;
using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Words;

/// <summary>Doses, levels and demands in words.</summary>
public static class TaskWords
{
    /// <summary>How much makes a success: "hold 5 s", "10 times".</summary>
    /// <param name="dose">Any dose.</param>
    public static string Of(Dose dose) =>
        DeskWords.Say("Dose" + dose.Kind, dose.Amount.ToString("0.##", CultureInfo.CurrentCulture));

    /// <summary>A level with its dose.</summary>
    /// <param name="level">Any level.</param>
    public static string Of(Level level) => DeskWords.Say("LevelAndDose", level.Name, Of(level.Dose));

    /// <summary>What a policy rules out of a level.</summary>
    /// <param name="level">Any level.</param>
    /// <param name="policy">The school's policy.</param>
    /// <returns>A sentence, two where a hold is too long as well; none if the level is allowed.</returns>
    public static string? WhyRemoved(Level level, SafetyPolicy policy)
    {
        var removals = Offer.Removed(level, policy);
        var demands = removals.Where(r => r.HoldCapS is null).Select(r => Of(r.Demand)).ToList();
        List<string> said = demands.Count == 0 ? [] : [DeskWords.Say("RemovedByPolicy", string.Join(", ", demands))];
        said.AddRange(removals.Select(r => r.HoldCapS).OfType<int>().Select(capS => DeskWords.Say("RemovedByHoldCap", capS)));
        return said.Count == 0 ? null : string.Join(" ", said);
    }

    /// <summary>A demand on the body.</summary>
    /// <param name="demand">Any demand.</param>
    public static string Of(BodyDemand demand) => DeskWords.Say("Demand" + demand);

    /// <summary>What a level's picture asks of the body beyond what its author ticked; none where it adds nothing.</summary>
    /// <param name="level">Any level.</param>
    public static string? ShownToo(Level level)
    {
        var added = PostureDemands.Of(level).Except(level.Demands).Select(Of).ToList();
        return added.Count == 0 ? null : DeskWords.Say("PictureAsksToo", string.Join(", ", added));
    }
}
