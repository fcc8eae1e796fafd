using Slantwise.Records.Checks;

namespace Slantwise.Records.Roster;

/// <summary>What roster files say: classes, who is in them, and everything to be said about the files.</summary>
public sealed record RosterReading
{
    /// <summary>Whether the files were read as the OneRoster set rather than as plain tables.</summary>
    public bool IsOneRoster { get; init; }

    /// <summary>The classes, each once, in the order met.</summary>
    public IReadOnlyList<RosterClass> Classes { get; init; } = [];

    /// <summary>The good rows, in the order met. Rows that could not be read are not among them.</summary>
    public IReadOnlyList<RosterRow> Rows { get; init; } = [];

    /// <summary>What is to be said, in the order met. One refused finding refuses the whole import.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}
