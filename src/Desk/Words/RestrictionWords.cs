using System.Globalization;
using Slantwise.Records.Schools;

namespace Slantwise.Desk.Words;

/// <summary>Restrictions in words: what is ruled out and for how long, never why.</summary>
public static class RestrictionWords
{
    /// <summary>A restriction in brief: "no rolls, until 12 March", or without a day where it holds until it is lifted.</summary>
    /// <param name="restriction">Any restriction.</param>
    /// <param name="day">The day it is looked at; one that ended before says so.</param>
    public static string Of(Restriction restriction, DateOnly day)
    {
        var what = DeskWords.Say("Without" + restriction.Without);
        if (restriction.IsLiftedByHand) return Gate(what, restriction, day);
        if (restriction.Until is not { } until) return what;
        return DeskWords.Say(until < day ? "EndedOn" : "UntilDay", what, Said(until, day));
    }

    /// <summary>A restriction with its first day, as a list of them shows it: "no rolls, since 3 March until 12 March".</summary>
    /// <param name="restriction">Any restriction.</param>
    /// <param name="day">The day it is looked at.</param>
    public static string Whole(Restriction restriction, DateOnly day)
    {
        if (restriction.Since is not { } since || restriction.Until < day && !restriction.IsLiftedByHand) return Of(restriction, day);
        var (what, isToCome) = (DeskWords.Say("Without" + restriction.Without), since > day);
        if (restriction.IsLiftedByHand) return Gate(PolicyWords.Say(isToCome ? "FromDay" : "SinceDay", what, Said(since, day)), restriction, day);
        return restriction.Until is { } until
            ? PolicyWords.Say(isToCome ? "FromUntil" : "SinceUntil", what, Said(since, day), Said(until, day))
            : PolicyWords.Say(isToCome ? "FromDay" : "SinceDay", what, Said(since, day));
    }

    private static string Gate(string what, Restriction restriction, DateOnly day) =>
        restriction.Until is not { } until ? PolicyWords.Say("GateNoDay", what)
        : PolicyWords.Say(until > day ? "GateBefore" : "GateOpen", what, Said(until, day));

    private static string Said(DateOnly date, DateOnly day) => date.ToString(date.Year == day.Year ? "M" : "d", CultureInfo.CurrentCulture);
}
