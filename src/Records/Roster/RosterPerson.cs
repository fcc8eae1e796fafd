using Slantwise.Records.Schools;

namespace Slantwise.Records.Roster;

/// <summary>One pupil of a reading with all rows about them, while a plan is made.</summary>
internal sealed class RosterPerson(string identity, IReadOnlyList<RosterRow> rows)
{
    public string Identity => identity;

    public IReadOnlyList<RosterRow> Rows => rows;

    public string? Key => rows[0].PupilKey;

    public string? Code => rows.Select(r => r.Code).FirstOrDefault(c => c is not null);

    /// <summary>The name of the rows that hold: a row that says the pupil has left does not rename them.</summary>
    public string? DisplayName => rows.FirstOrDefault(r => !r.HasLeft)?.DisplayName;

    /// <summary>Whether any row says that the pupil is in a class.</summary>
    public bool IsHere => rows.Any(r => !r.HasLeft);

    /// <summary>The pupil of the school this is; none for a new one.</summary>
    public Pupil? Known { get; set; }

    /// <summary>The pupil as it would be saved; none for one who is not to be added.</summary>
    public Pupil? Planned { get; set; }

    /// <summary>Whether it could not be told who this is.</summary>
    public bool IsRefused { get; set; }
}
