using System.Collections.Frozen;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Postures;

/// <summary>What a posture asks of a body that a policy or a restriction may rule out, read off the posture itself.</summary>
public static class PostureDemands
{
    // Hands that only steady a body are not a demand: an eighth of the body's weight is one, by our own choice.
    private const double CarryingFraction = .125;

    private static readonly Lazy<FrozenDictionary<string, IReadOnlyList<BodyDemand>>> OfLibrary =
        new(() => PostureLibrary.All.ToFrozenDictionary(p => p.Key, Of, StringComparer.Ordinal));

    /// <summary>The demands of a posture.</summary>
    /// <param name="posture">One that settles.</param>
    /// <returns>In the order of <see cref="BodyDemand"/>. Weight on hands counts from an eighth of the body's weight.</returns>
    public static IReadOnlyList<BodyDemand> Of(Posture posture)
    {
        var settled = posture.Settle();
        var demands = new List<BodyDemand>();
        if (settled.IsInverted) demands.Add(BodyDemand.Inversion);
        if (posture.HasHeadWeight) demands.Add(BodyDemand.HeadWeight);
        if (HandFraction(settled) >= CarryingFraction) demands.Add(BodyDemand.HandWeight);
        return demands;
    }

    /// <summary>Everything a level asks: what its author wrote and what its posture shows.</summary>
    /// <param name="level">The level.</param>
    /// <returns>Each demand once, in the order of <see cref="BodyDemand"/>. A posture that the library does not have adds nothing.</returns>
    public static IReadOnlyList<BodyDemand> Of(Level level) =>
        level.Posture is { } key && OfLibrary.Value.TryGetValue(key, out var shown) && shown.Count > 0
            ? [.. level.Demands.Union(shown).Order()]
            : level.Demands;

    private static double HandFraction(SettledPosture settled)
    {
        var contacts = settled.Bodies.SelectMany(b => b.Contacts).ToList();
        var shares = PostureBalance.Of(settled).Whole.Loads.Shares;
        return shares.Zip(contacts).Where(pair => pair.Second.Contact.Part is ContactPart.Hand or ContactPart.Fingertips).Sum(pair => pair.First.ShareFraction);
    }
}
