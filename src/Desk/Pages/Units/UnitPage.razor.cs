using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slantwise.Desk.Progress;
using Slantwise.Desk.Words;
using Slantwise.Records.Checks;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Units;
using Slantwise.Records.Units.Revisits;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Units;

/// <summary>One unit: outcomes, lessons, what works towards what, and what the evidence asks.</summary>
public partial class UnitPage
{
    private TeachingUnit? _unit;
    private UnitDraft? _draft;
    private TaskShelf? _tasks;
    private UnitCoverage? _coverage;
    private UnitRevisit? _revisit;
    private IReadOnlyList<SchoolClass> _classes = [];
    private IReadOnlyList<Lesson> _lessons = [];
    private string _className = "";
    private bool _isDirty;
    private bool _isSaved;
    private bool _isAsking;
    private string? _failure;
    private string? _notice;

    /// <summary>The unit shown.</summary>
    [Parameter]
    public Guid Id { get; set; }

    private string Lead => _unit!.FirstDay is { } day
        ? PlannerWords.Say("UnitLeadFrom", PlannerWords.SayCount("UnitLessons", _unit.Content.Lessons.Count), LessonName.Day(day, Desk.Today))
        : PlannerWords.SayCount("UnitLessons", _unit.Content.Lessons.Count);

    private IReadOnlyList<Finding> Findings => UnitCheck.Of(_draft!.ToUnit(), _classes);

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        _unit = await Desk.Store.FindUnitAsync(Desk.SchoolId, Id);
        (_draft, _isDirty, _isSaved, _isAsking, _failure, _notice) = (null, false, false, false, null, null);
        if (_unit is null) return;
        _classes = await Desk.Store.ListClassesAsync(Desk.SchoolId);
        _className = _classes.FirstOrDefault(c => c.Id == _unit.ClassId)?.Name ?? "";
        _tasks = TaskShelf.Of(await Desk.Store.ListTasksAsync(Desk.SchoolId), CultureInfo.CurrentUICulture);
        _draft = new UnitDraft(_unit);
        await ReadAsync();
    }

    // What the calendar and the entries say of the unit as it is kept.
    private async Task ReadAsync()
    {
        _lessons = [.. (await Desk.Store.ListLessonsAsync(Desk.SchoolId)).Where(l => l.ClassId == _unit!.ClassId)];
        var records = (await Evidence.UnitReadings.LoadAsync(Desk, _unit!.ClassId)).Records;
        _coverage = UnitCoverage.Of(_unit.Content, records);
        _revisit = UnitRevisit.Of(_unit.Content, records, _tasks!.NameOf);
    }

    private void Touch() => (_isDirty, _isSaved, _notice) = (true, false, null);

    private void Taken(int count)
    {
        Touch();
        _notice = PlannerWords.SayCount("Taken", count);
    }

    private async Task SaveAsync()
    {
        if (await KeepAsync(_draft!.ToUnit())) _isSaved = true;
    }

    // Everything that is kept goes through here, so that nothing typed is lost to a button further down.
    private async Task<bool> KeepAsync(TeachingUnit unit)
    {
        _failure = UnitCheck.Of(unit, _classes).Any(f => f.IsRefused) ? Say("FixFirst") : await Desk.TryAsync(() => Desk.Store.SaveUnitAsync(unit));
        if (_failure is not null) return false;
        (_unit, _isDirty) = (unit, false);
        // The draft stays, so that who types keeps their place; only what was made meanwhile is told to it.
        _draft!.FirstDay = unit.FirstDay;
        foreach (var (typed, kept) in _draft.Lessons.Zip(unit.Content.Lessons)) typed.LessonId = kept.LessonId;
        await ReadAsync();
        return true;
    }

    private async Task MakeLessonAsync(int index)
    {
        var unit = _draft!.ToUnit();
        if (UnitCheck.Of(unit, _classes).Any(f => f.IsRefused))
        {
            _failure = Say("FixFirst");
            return;
        }
        var day = _draft.DayOf(index, Desk.Today);
        var made = UnitCalendar.LessonOf(unit, unit.Content.Lessons[index], day, Desk.NewId());
        _failure = await Desk.TryAsync(() => Desk.Store.SaveLessonAsync(made));
        if (_failure is not null) return;
        var tied = unit.Content.Lessons.Select((l, i) => i == index ? l with { LessonId = made.Id } : l).ToList();
        if (await KeepAsync(unit with { Content = unit.Content with { Lessons = tied } })) _notice = PlannerWords.SayCount("MadeLessons", 1);
    }

    private async Task FillCalendarAsync((DateOnly FirstDay, DayOfWeek? Weekday) when)
    {
        var (unit, made) = UnitCalendar.Fill(_draft!.ToUnit(), when.FirstDay, when.Weekday, Desk.NewId);
        if (UnitCheck.Of(unit, _classes).Any(f => f.IsRefused))
        {
            _failure = Say("FixFirst");
            return;
        }
        _failure = await Desk.TryAsync(async () =>
        {
            foreach (var lesson in made) await Desk.Store.SaveLessonAsync(lesson);
        });
        if (_failure is null && await KeepAsync(unit)) _notice = PlannerWords.SayCount("MadeLessons", made.Count);
    }

    private async Task CopyAsync((string Name, Guid ClassId, DateOnly? FirstDay) wanted)
    {
        // The page is left for the copy's: what was typed here is kept first.
        if (_isDirty && !await KeepAsync(_draft!.ToUnit())) return;
        var copy = UnitCopy.Of(_unit!, Desk.NewId(), wanted.ClassId, wanted.Name.Trim(), wanted.FirstDay);
        _failure = UnitCheck.Of(copy, _classes).FirstOrDefault(f => f.IsRefused)?.Sentence(CultureInfo.CurrentUICulture) ?? await Desk.TryAsync(() => Desk.Store.SaveUnitAsync(copy));
        if (_failure is null) Navigation.NavigateTo($"/units/{copy.Id}");
    }

    private async Task RemoveAsync()
    {
        _failure = await Desk.TryAsync(() => Desk.Store.RemoveUnitAsync(Desk.SchoolId, Id));
        if (_failure is not null) return;
        _isDirty = false;
        Navigation.NavigateTo("/units");
    }
}
