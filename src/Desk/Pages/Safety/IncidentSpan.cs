namespace Slantwise.Desk.Pages.Safety;

/// <summary>How far back the log is looked at.</summary>
public enum IncidentSpan
{
    /// <summary>All of it.</summary>
    Ever = 0,

    /// <summary>The last 30 days.</summary>
    Month = 1,

    /// <summary>The last 365 days.</summary>
    Year = 2,
}
