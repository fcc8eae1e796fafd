using Slantwise.Records.Planning;

namespace Slantwise.Records.Lessons;

/// <summary>A class, a day, a sheet.</summary>
public sealed record Lesson
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The lesson's id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>The class taught.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>The day, in the school's calendar.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What the lesson is called in lists, up to 80 characters.</summary>
    public string Title { get; init; } = "";

    /// <summary>The sheet used; none until one is chosen.</summary>
    public Guid? SheetId { get; init; }

    /// <summary>The frozen version in use; none until it is printed or opened.</summary>
    public int? SheetVersion { get; init; }

    /// <summary>Mats laid out, 0 or more; none where it was not planned.</summary>
    public int? MatCount { get; init; }

    /// <summary>The blocks of the lesson in order.</summary>
    public IReadOnlyList<LessonPhase> Phases { get; init; } = [];

    /// <summary>What pupils should learn in it, in the teacher's words; at most 5 of 160 characters.</summary>
    public IReadOnlyList<string> Aims { get; init; } = [];

    /// <summary>What to show, step by step, when demonstrating; at most 8 of 160 characters.</summary>
    public IReadOnlyList<string> Demonstration { get; init; } = [];

    /// <summary>What the teacher keeps for the plan of time and mats; none where the usual is meant.</summary>
    public PlanningChoice? Practice { get; init; }

    /// <summary>Whether two lessons say the same, list by list.</summary>
    /// <param name="other">Another lesson.</param>
    public bool Equals(Lesson? other) => other is not null
        && (SchoolId, Id, ClassId, Date, Title, SheetId, SheetVersion) == (other.SchoolId, other.Id, other.ClassId, other.Date, other.Title, other.SheetId, other.SheetVersion)
        && MatCount == other.MatCount && Practice == other.Practice
        && Phases.SequenceEqual(other.Phases) && Aims.SequenceEqual(other.Aims) && Demonstration.SequenceEqual(other.Demonstration);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(SchoolId, Id, Date, Title, SheetId, SheetVersion);
}
