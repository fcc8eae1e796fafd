using Slantwise.Records.Checks;

namespace Slantwise.Records.Roster;

/// <summary>That a pupil is in a class, as roster files give it. All that is kept of a file.</summary>
public sealed record RosterRow
{
    /// <summary>Where it was read.</summary>
    public required FilePlace Place { get; init; }

    /// <summary>The class's name, as in <see cref="RosterReading.Classes"/>.</summary>
    public required string ClassName { get; init; }

    /// <summary>The id the files give the pupil; none where they give none.</summary>
    public string? PupilKey { get; init; }

    /// <summary>The code the files give the pupil; none where one is to be made or kept.</summary>
    public string? Code { get; init; }

    /// <summary>What the pupil is called; none where the files give no name.</summary>
    public string? DisplayName { get; init; }

    /// <summary>What the same pupil may have been called by an earlier reading, when fewer pupils shared the name: shorter or longer initials.</summary>
    public IReadOnlyList<string> OtherLabels { get; init; } = [];

    /// <summary>Whether the files say that the pupil has left the class.</summary>
    public bool HasLeft { get; init; }
}
