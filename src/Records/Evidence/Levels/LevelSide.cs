namespace Slantwise.Records.Evidence.Levels;

/// <summary>On which side of another a level lies, as far as tries can tell.</summary>
public enum LevelSide
{
    /// <summary>It cannot be told yet.</summary>
    Unclear,

    /// <summary>Harder than the other.</summary>
    Harder,

    /// <summary>Easier than the other.</summary>
    Easier,
}
