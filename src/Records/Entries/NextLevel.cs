namespace Slantwise.Records.Entries;

/// <summary>Where a pupil goes after a set. The pupil decides.</summary>
public enum NextLevel
{
    /// <summary>The same level again.</summary>
    Same = 1,

    /// <summary>A harder level.</summary>
    Harder = 2,

    /// <summary>An easier level.</summary>
    Easier = 3,
}
