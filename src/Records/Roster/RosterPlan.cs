using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Roster;

/// <summary>What an import would do, to be looked at before it is done: who is added, what changes, who has left.</summary>
/// <remarks>
/// A class is known by the id of the files, else by its name. A pupil is known by the id, else by the code, else by the name within the class.
/// Nothing is ever deleted: a pupil who is no longer in the file of an imported class leaves it and keeps the evidence.
/// </remarks>
public sealed record RosterPlan
{
    /// <summary>What would be added: classes first, then pupils and memberships in the order of the files.</summary>
    public IReadOnlyList<RosterAddition> Added { get; init; } = [];

    /// <summary>What would change.</summary>
    public IReadOnlyList<RosterChange> Changed { get; init; } = [];

    /// <summary>Who would leave which class; empty where the import is refused, since a row that could not be read is nobody's departure.</summary>
    public IReadOnlyList<RosterLeaving> Left { get; init; } = [];

    /// <summary>Memberships of the files that hold already, with nothing about the pupil to change.</summary>
    public int SameCount { get; init; }

    /// <summary>What is to be said: the reading's findings, then those of comparing it with the school.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>What to save, all at once; empty where the import is refused.</summary>
    public RosterSave Save { get; init; } = new();

    /// <summary>Whether the import can be done: no finding refuses it.</summary>
    public bool CanSave => !Findings.Any(f => f.IsRefused);

    /// <summary>Whether there is nothing to do.</summary>
    public bool IsEmpty => Added.Count == 0 && Changed.Count == 0 && Left.Count == 0;

    /// <summary>Compares a reading with what the school has.</summary>
    /// <param name="reading">What the files say.</param>
    /// <param name="schoolId">The school to import into.</param>
    /// <param name="classes">All its classes.</param>
    /// <param name="pupils">All its pupils.</param>
    /// <param name="enrolments">All its memberships, those that ended included.</param>
    /// <param name="clock">Dates the ids of what is added.</param>
    /// <returns>The plan. With a refused finding it saves nothing, and the lists still show what the good rows would do.</returns>
    public static RosterPlan Of(
        RosterReading reading,
        Guid schoolId,
        IReadOnlyList<SchoolClass> classes,
        IReadOnlyList<Pupil> pupils,
        IReadOnlyList<Enrolment> enrolments,
        TimeProvider clock) => new RosterPlanner(reading, schoolId, classes, pupils, enrolments, clock).Plan();
}
