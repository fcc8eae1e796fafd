namespace Slantwise.Paper.Layout;

/// <summary>A strip of a page over its whole width, measured before it is drawn.</summary>
/// <param name="LeastMm">The least height it needs.</param>
/// <param name="Draw">Draws it, given its top and the height it got.</param>
internal sealed record Block(double LeastMm, Action<Sketch, double, double> Draw)
{
    /// <summary>More height it can put to use.</summary>
    public double StretchMm { get; init; }

    /// <summary>White space above it, unless it is the first on its page.</summary>
    public double GapMm { get; init; }

    /// <summary>It may reach into the foot of a page, where otherwise only the form's code stands.</summary>
    public bool IsFoot { get; init; }

    /// <summary>It is one of the rows that are counted on a page.</summary>
    public bool IsRow { get; init; }

    /// <summary>Never the last on a page while something follows.</summary>
    public bool StaysWithNext { get; init; }

    /// <summary>What is printed again above it where it is the first of its kind on a page.</summary>
    public Block? Head { get; init; }
}
