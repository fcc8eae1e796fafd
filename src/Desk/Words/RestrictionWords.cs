using System.Globalization;
using Slantwise.Records.Schools;

namespace Slantwise.Desk.Words;

/// <summary>Restrictions in words: what is ruled out and until when, never why.</summary>
public static class RestrictionWords
{
    /// <summary>A restriction: "no rolls, until 12 March", or without a day where it holds until it is lifted.</summary>
    /// <param name="restriction">Any restriction.</param>
    /// <param name="day">The day it is looked at; one that ended before says so.</param>
    public static string Of(Restriction restriction, DateOnly day)
    {
        var what = DeskWords.Say("Without" + restriction.Without);
        if (restriction.Until is not { } until) return what;
        var last = until.ToString(until.Year == day.Year ? "M" : "d", CultureInfo.CurrentCulture);
        return DeskWords.Say(restriction.HoldsOn(day) ? "UntilDay" : "EndedOn", what, last);
    }
}
