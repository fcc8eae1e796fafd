namespace Slantwise.Records.Safety;

/// <summary>How much care a task asks for with its controls in place, as the teacher judges it.</summary>
public enum RiskLevel
{
    /// <summary>The usual care.</summary>
    Low = 1,

    /// <summary>Controls are needed and in place.</summary>
    Medium = 2,

    /// <summary>Only with the teacher beside it.</summary>
    High = 3,
}
