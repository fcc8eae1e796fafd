namespace Slantwise.Engines.Marks;

/// <summary>What a field shows.</summary>
public enum MarkVerdict
{
    /// <summary>Nothing, or what was rubbed out.</summary>
    Empty = 0,

    /// <summary>A mark.</summary>
    Marked = 1,

    /// <summary>Something that may or may not be meant: for a person to look at.</summary>
    Doubtful = 2,
}
