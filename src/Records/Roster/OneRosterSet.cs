using Slantwise.Records.Checks;

namespace Slantwise.Records.Roster;

/// <summary>What is gathered while the tables of a set are read one after the other.</summary>
internal sealed class OneRosterSet
{
    public Dictionary<string, RosterClass> Classes { get; } = [];

    public Dictionary<string, OneRosterUser> Users { get; } = [];

    /// <summary>Users whom the roles name as students.</summary>
    public HashSet<string> Students { get; } = [];

    public List<RosterDraft> Drafts { get; } = [];

    public HashSet<string> SchoolKeys { get; } = [];

    /// <summary>Classes whose own row was refused: a row that names one is not refused once more.</summary>
    public HashSet<string> RefusedClassKeys { get; } = [];

    /// <summary>Users whose own row was refused.</summary>
    public HashSet<string> RefusedUserKeys { get; } = [];
}

internal sealed record OneRosterUser(FilePlace Place, string GivenName, string? FamilyName, bool IsDeleted);
