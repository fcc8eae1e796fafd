using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Orders;
using Slantwise.Records.Evidence.Orders;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>What the entries say about the order of levels, as words. They never say which order is right.</summary>
public static class OrderText
{
    /// <summary>How well the order foretells who managed what, or why that cannot be said.</summary>
    public static string Whole(GuttmanOrder order)
    {
        if (order.Cautions.HasFlag(OrderCautions.NoData)) return UnitWords.Say("OrderNothing", TaskOrder.LeastTrialCount);
        var said = UnitWords.Say("OrderForetells", order.AnswerCount - order.ErrorCount, order.AnswerCount, order.PupilCount, (int)Math.Round(order.MarginalFraction!.Value * order.AnswerCount));
        var minded = new[] { (OrderCautions.FewPupils, "OrderFewPupils"), (OrderCautions.MostlyUntried, "OrderUntried") };
        return string.Join(" ", minded.Where(m => order.Cautions.HasFlag(m.Item1)).Select(m => UnitWords.Say(m.Item2)).Prepend(said));
    }

    /// <summary>The two coefficients, undefined said as undefined; empty without an answer.</summary>
    public static string Figures(GuttmanOrder order) => order.ReproducibilityFraction is not { } reproduced ? "" : UnitWords.Say(
        "OrderFigures", Number(reproduced), order.ScalabilityFraction is { } scale ? Number(scale) : UnitWords.Say("OrderUndefined"));

    /// <summary>The two levels.</summary>
    public static string Levels(OrderedPair pair) => UnitWords.Say("PairOf", pair.EasierNumber, pair.HarderNumber);

    /// <summary>Of those who managed the second, who managed the first too.</summary>
    public static string Both(OrderedPair pair) => pair.ManagedHarderCount == 0
        ? UnitWords.Say("NobodyManaged", pair.HarderNumber)
        : UnitWords.SayCount("ManagedToo", pair.ManagedHarderCount, pair.ManagedBothCount);

    /// <summary>Where that share likely lies; for few pupils that there are few.</summary>
    public static string BothRange(OrderedPair pair)
    {
        if (pair.BothRange is not { } range) return "";
        if (pair.ManagedHarderCount < OrderedPair.EnoughPupilCount) return UnitWords.Say("FewPupilsYet");
        var (low, high) = DotsOfTen.TenthsOf(range.LowFraction, range.HighFraction);
        return EvidenceWords.Say("LikelyTenths", low, high);
    }

    /// <summary>Who managed only one of the two.</summary>
    public static string Only(OrderedPair pair) =>
        UnitWords.Say("OnlyOne", pair.EasierNumber, pair.Counts.AsOrderedCount, pair.HarderNumber, pair.Counts.AgainstCount);

    /// <summary>What it rests on.</summary>
    public static string Compared(OrderedPair pair) => UnitWords.SayCount("ComparedPupils", pair.Counts.ComparedCount);

    /// <summary>Where the first comes off 5 of 10, what the model says of the second.</summary>
    public static string Model(OrderedPair pair)
    {
        if (pair is not { LowOfEvenFraction: { } low, HighOfEvenFraction: { } high }) return UnitWords.Say("ModelNone");
        var (from, to) = DotsOfTen.TenthsOf(low, high);
        return UnitWords.Say(pair.IsMostlyAssumed ? "ModelAssumed" : "ModelSays", from, to);
    }

    /// <summary>How the entries stand to the sheet's order.</summary>
    public static string Standing(OrderedPair pair) => UnitWords.Say("Order" + pair.Standing);

    /// <summary>A question about a pair that the data speak against; none where they do not.</summary>
    public static string? Question(OrderedPair pair) => pair.Standing switch
    {
        OrderStanding.Against => Looks(pair) + " " + UnitWords.Say("OrderAsk"),
        OrderStanding.PerhapsAgainst => Looks(pair) + " " + UnitWords.Say("OrderChance") + " " + UnitWords.Say("OrderAsk"),
        _ => null,
    };

    private static string Looks(OrderedPair pair) => UnitWords.Say("OrderLooks", pair.HarderNumber, pair.EasierNumber) + " "
        + (pair.Counts.ComparedCount < OrderedPair.EnoughPupilCount ? UnitWords.Say("OrderByModel", pair.EasierNumber, pair.HarderNumber, Model(pair)) : UnitWords.SayCount("OrderSeen", pair.Counts.ComparedCount, pair.HarderNumber, pair.Counts.AgainstCount, pair.EasierNumber, pair.Counts.AsOrderedCount));

    private static string Number(double value) => value.ToString("0.00;−0.00;0.00", CultureInfo.CurrentCulture);
}
