namespace Slantwise.Records.Safety;

/// <summary>What kind of thing happened.</summary>
public enum IncidentKind
{
    /// <summary>Somebody was hurt, or something broke.</summary>
    Incident = 1,

    /// <summary>Nobody was hurt, but somebody could have been.</summary>
    NearMiss = 2,
}
