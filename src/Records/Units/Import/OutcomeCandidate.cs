using Slantwise.Records.Checks;

namespace Slantwise.Records.Units.Import;

/// <summary>An outcome that a file offers.</summary>
public sealed record OutcomeCandidate
{
    /// <summary>Its id: that of its source, or the same for the same words every time.</summary>
    public required Guid Id { get; init; }

    /// <summary>Where in the file it is: its line in a table, its number among the items otherwise, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>Its code; may be empty.</summary>
    public string Code { get; init; } = "";

    /// <summary>What it says; empty where that is too long to be kept.</summary>
    public string Text { get; init; } = "";

    /// <summary>The framework it belongs to; may be empty.</summary>
    public string Framework { get; init; } = "";

    /// <summary>What kind of item it is, in the file's words; may be empty.</summary>
    public string Kind { get; init; } = "";

    /// <summary>For which years, in the file's words; may be empty.</summary>
    public string Years { get; init; } = "";

    /// <summary>How deep it stands under others, 0 for the top.</summary>
    public int Depth { get; init; }

    /// <summary>Whether others stand under it: then it is often a heading.</summary>
    public bool HasParts { get; init; }

    /// <summary>What there is to say about this one; what refuses it keeps it from being taken.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Whether it can be taken.</summary>
    /// <param name="keepsOnlyCode">Whether only the code is kept: one without a code is then nothing.</param>
    public bool CanBeTaken(bool keepsOnlyCode) => !Findings.Any(f => f.IsRefused) && (Code.Length > 0 || (!keepsOnlyCode && Text.Length > 0));
}
