namespace Slantwise.Records.Tasks.Designs;

/// <summary>How much a factor is meant to matter for difficulty. The author's hypothesis.</summary>
public enum FactorRole
{
    /// <summary>The one whose change is expected to change difficulty most.</summary>
    Key = 1,

    /// <summary>Helps to make levels finer.</summary>
    Supporting = 2,
}
