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
}
