using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>A lesson's plan while it is being typed.</summary>
/// <param name="lesson">The lesson as it is kept, or a new one.</param>
public sealed class LessonDraft(Lesson lesson)
{
    /// <summary>The class; none while none is picked.</summary>
    public Guid? ClassId { get; set; } = lesson.ClassId == Guid.Empty ? null : lesson.ClassId;

    /// <summary>The day; none while nothing is typed.</summary>
    public DateOnly? Date { get; set; } = lesson.Date;

    /// <summary>The title.</summary>
    public string Title { get; set; } = lesson.Title;

    /// <summary>The sheet; none while none is picked.</summary>
    public Guid? SheetId { get; set; } = lesson.SheetId;

    /// <summary>Mats laid out.</summary>
    public int? MatCount { get; set; } = lesson.MatCount;

    /// <summary>The aims, one a line.</summary>
    public string Aims { get; set; } = string.Join('\n', lesson.Aims);

    /// <summary>What to show, one step a line.</summary>
    public string Demonstration { get; set; } = string.Join('\n', lesson.Demonstration);

    /// <summary>The blocks in order.</summary>
    public List<PhaseDraft> Phases { get; } =
        [.. lesson.Phases.Select(p => new PhaseDraft { Kind = p.Kind, DurationMin = p.DurationMin, Note = p.Note })];

    /// <summary>How long the blocks are together, in minutes.</summary>
    public int TotalMin => Phases.Sum(p => p.DurationMin ?? 0);

    /// <summary>The lesson as typed. Another sheet has no frozen version yet.</summary>
    public Lesson ToLesson() => lesson with
    {
        ClassId = ClassId ?? Guid.Empty,
        Date = Date ?? lesson.Date,
        Title = Title.Trim(),
        SheetId = SheetId,
        SheetVersion = SheetId == lesson.SheetId ? lesson.SheetVersion : null,
        MatCount = MatCount,
        Aims = LinesOf(Aims),
        Demonstration = LinesOf(Demonstration),
        Phases = [.. Phases.Select(p => new LessonPhase(p.Kind, p.DurationMin ?? 0, p.Note.Trim()))],
    };

    /// <summary>What was typed line by line: each without white space around it, empty ones passed over.</summary>
    /// <param name="typed">The text of a field.</param>
    public static IReadOnlyList<string> LinesOf(string typed) => typed.Split(['\n', '\r'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
