namespace Slantwise.Records.Checks;

/// <summary>Whether input with a finding can be taken.</summary>
public enum FindingSeverity
{
    /// <summary>Taken, and pointed out.</summary>
    Flagged = 1,

    /// <summary>Not taken; nothing already kept is lost.</summary>
    Refused = 2,
}
