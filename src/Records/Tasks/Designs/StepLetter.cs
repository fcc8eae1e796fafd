namespace Slantwise.Records.Tasks.Designs;

/// <summary>What an adaptation changes.</summary>
public enum StepLetter
{
    /// <summary>Where, and how much room.</summary>
    Space = 1,

    /// <summary>What is done.</summary>
    Task = 2,

    /// <summary>With what.</summary>
    Equipment = 3,

    /// <summary>With whom, and what others do.</summary>
    People = 4,
}
