using Slantwise.Records.Checks;

namespace Slantwise.Records.Roster;

/// <summary>A pupil in a class as a file gives it, with the names from which the label is made. It lives only while files are read.</summary>
internal sealed record RosterDraft
{
    public required FilePlace Place { get; init; }

    public required string ClassName { get; init; }

    public string? Code { get; init; }

    public string? PupilKey { get; init; }

    /// <summary>A label that the file gives as it is; none where it is to be made of the names.</summary>
    public string? Name { get; init; }

    public string? GivenName { get; init; }

    public string? FamilyName { get; init; }

    public bool HasLeft { get; init; }

    /// <summary>What tells this pupil from the others of the reading: the id, else the code, else the class and the name.</summary>
    public string Identity =>
        PupilKey is not null ? "id:" + PupilKey
        : Code is not null ? "code:" + Code.ToUpperInvariant()
        : "name:" + Alike.Folded(ClassName) + "\n" + Alike.Folded(Name ?? GivenName) + "\n" + Alike.Folded(Name is null ? FamilyName : "");
}
