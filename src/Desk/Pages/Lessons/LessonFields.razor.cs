using Microsoft.AspNetCore.Components;
using Slantwise.Records.Checks;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>A lesson's plan as a form.</summary>
public partial class LessonFields
{
    private LessonDraft _draft = null!;
    private Guid _draftOf;
    private bool _isDirty;
    private bool _isSaved;
    private string? _failure;

    [Inject]
    private DeskSchool Desk { get; set; } = null!;

    /// <summary>The lesson as it is kept, or a new one.</summary>
    [Parameter, EditorRequired]
    public Lesson Lesson { get; set; } = null!;

    /// <summary>The school's classes.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<SchoolClass> Classes { get; set; } = [];

    /// <summary>The school's sheets.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<Sheet> Sheets { get; set; } = [];

    /// <summary>Whether results were taken: class and sheet then stay.</summary>
    [Parameter]
    public bool HasEntries { get; set; }

    /// <summary>Whether the form stands in a section of a page, not by itself.</summary>
    [Parameter]
    public bool IsPart { get; set; }

    /// <summary>Called with the lesson once it is saved.</summary>
    [Parameter]
    public EventCallback<Lesson> OnSaved { get; set; }

    private IReadOnlyList<Finding> Findings =>
        LessonCheck.Of(_draft.ToLesson(), Classes, Sheets.FirstOrDefault(s => s.Id == _draft.SheetId));

    /// <inheritdoc />
    protected override void OnParametersSet()
    {
        // What was typed outlives the page's own saves, such as preparing the sheet.
        if (_draftOf == Lesson.Id && _isDirty) return;
        (_draft, _draftOf) = (new LessonDraft(Lesson), Lesson.Id);
    }

    private void Touch() => (_isDirty, _isSaved) = (true, false);

    private void Add()
    {
        _draft.Phases.Add(new PhaseDraft());
        Touch();
    }

    private void Move(int index, int by)
    {
        var phases = _draft.Phases;
        (phases[index], phases[index + by]) = (phases[index + by], phases[index]);
        Touch();
    }

    private void Remove(int index)
    {
        _draft.Phases.RemoveAt(index);
        Touch();
    }

    private async Task SaveAsync()
    {
        // The version may have been prepared since the draft was begun.
        var lesson = _draft.ToLesson();
        if (lesson.SheetId == Lesson.SheetId) lesson = lesson with { SheetVersion = Lesson.SheetVersion };
        _failure = Findings.Any(f => f.Severity == FindingSeverity.Refused)
            ? Say("FixFirst")
            : await Desk.TryAsync(() => Desk.Store.SaveLessonAsync(lesson));
        if (_failure is not null) return;
        (_isDirty, _isSaved) = (false, true);
        await OnSaved.InvokeAsync(lesson);
    }
}
