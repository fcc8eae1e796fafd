using Slantwise.Records.Schools;

namespace Slantwise.Records.Roster;

/// <summary>Classes, pupils and who belongs where, to be saved together or not at all.</summary>
public sealed record RosterSave
{
    /// <summary>Classes to add or replace.</summary>
    public IReadOnlyList<SchoolClass> Classes { get; init; } = [];

    /// <summary>Pupils to add or replace.</summary>
    public IReadOnlyList<Pupil> Pupils { get; init; } = [];

    /// <summary>Memberships to add or replace.</summary>
    public IReadOnlyList<Enrolment> Enrolments { get; init; } = [];
}
