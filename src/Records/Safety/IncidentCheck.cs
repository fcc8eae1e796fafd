using Slantwise.Records.Checks;

namespace Slantwise.Records.Safety;

/// <summary>Whether an incident or near miss can be kept.</summary>
public static class IncidentCheck
{
    /// <summary>Characters in a place, at most.</summary>
    public const int PlaceLength = 120;

    /// <summary>Characters in what happened, what was done and what will be different, each at most.</summary>
    public const int TextLength = 1000;

    private const int MinutesADay = 24 * 60;

    /// <summary>Looks at an incident.</summary>
    /// <param name="incident">As it was written down.</param>
    /// <param name="today">Today, in the school's calendar: nothing has happened after it.</param>
    /// <returns>Findings in the order of the form. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(Incident incident, DateOnly today)
    {
        var findings = new List<Finding>();
        if (!Enum.IsDefined(incident.Kind)) findings.Add(Finding.Refused("IncidentKindUnknown"));
        if (incident.Day > today) findings.Add(Finding.Refused("IncidentAhead", incident.Day));
        if (incident.MinuteOfDay is < 0 or >= MinutesADay) findings.Add(Finding.Refused("IncidentTimeUnknown"));
        TextCheck.Add(findings, incident.Place, PlaceLength, "IncidentPlaceTooLong");
        if (string.IsNullOrWhiteSpace(incident.Happened)) findings.Add(Finding.Refused("IncidentSaysNothing"));
        TextCheck.Add(findings, incident.Happened, TextLength, "IncidentHappenedTooLong");
        TextCheck.Add(findings, incident.Done, TextLength, "IncidentDoneTooLong");
        TextCheck.Add(findings, incident.Changed, TextLength, "IncidentChangedTooLong");
        return findings;
    }
}
