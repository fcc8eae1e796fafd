namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>What befell a field besides a mark that is meant.</summary>
internal enum Trouble
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A mark that was rubbed out.</summary>
    RubbedOut,

    /// <summary>A dot smaller than 0.6 mm.</summary>
    StrayDot,

    /// <summary>Writing from a written field beside it that pokes in.</summary>
    Writing,

    /// <summary>A mark beside it that may reach over.</summary>
    Neighbour,

    /// <summary>The mark that is meant lies up to 1.5 mm off.</summary>
    Sloppy,
}
