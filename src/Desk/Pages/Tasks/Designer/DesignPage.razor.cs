using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slantwise.Desk.Pages.Library;
using Slantwise.Desk.Pages.Sheets;
using Slantwise.Desk.Words;
using Slantwise.Records.Checks;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;
using Slantwise.Records.Tasks.Designs.Ladders;
using Slantwise.Records.Tasks.Own;

namespace Slantwise.Desk.Pages.Tasks.Designer;

/// <summary>Designs the levels of a task from its factor grid. It suggests and asks; the teacher takes, and what pupils do they choose.</summary>
public partial class DesignPage
{
    private const string FromNothing = "nothing";

    private DesignerState? _state;
    private IReadOnlyList<MovementTask> _own = [];
    private IReadOnlyList<MovementTask> _kept = [];
    private IReadOnlyList<Finding> _notes = [];
    private ReachAnswer? _reach;
    private Guid _sheetId;
    private string _newFactor = "";
    private bool _isKept;
    private bool _isDirty;
    private bool _isSaved;
    private string? _failure;

    /// <summary>The own task to design; none for a new one.</summary>
    [Parameter]
    public Guid? Id { get; set; }

    /// <summary>The task of the library to start from, by its key; <c>nothing</c> for an empty one.</summary>
    [SupplyParameterFromQuery(Name = "from")]
    private string? From { get; set; }

    private static string ReadersLanguage => CultureInfo.CurrentUICulture.TwoLetterISOLanguageName;

    private bool IsUnknown => !string.IsNullOrEmpty(From);

    private string Title => _state!.Words.Name.Length == 0 ? DesignerWords.Say("Title") : DesignerWords.Say("TitleOf", _state.Words.Name);

    // How many of the task's levels are not among the suggested ones.
    private int GoingCount => _state!.Design.Levels.Count(l => _state.Rows.All(r => r.Level.Id != l.Id));

    private SheetContent ToLookAt => new()
    {
        Title = _state!.Words.Name,
        Tasks = [new SheetTask { TaskId = _state.Design.Id, Name = _state.Words.Name, Levels = [.. _state.Rows.Select(r => r.Level.Named(r.Name))] }],
    };

    private IReadOnlyList<Finding> SuggestedFindings =>
    [
        .. LadderFindings.Of(LadderProposal.Of(_state!.Design, _state.Plan!)),
        .. LadderFindings.Of(_state.Suggested, _state.Chosen, [.. _state.Rows.Where(r => r.IsOpen).Select(r => r.Level.Id)], Desk.School.Policy, _state.Words),
        .. _reach is { Views: [var view, ..] } answer ? LadderFindings.Of(view.Reach, answer.Band, answer.ClassName) : [],
    ];

    private IReadOnlyList<Finding> KeptFindings => LadderFindings.Of(_state!.Design, null, [], Desk.School.Policy, _state.Words);

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        (_state, _notes, _reach, _isDirty, _isSaved, _failure) = (null, [], null, false, false, null);
        _own = await Desk.Store.ListTasksAsync(Desk.SchoolId);
        // The class that had the task last is looked at first.
        _sheetId = (await Desk.Store.ListSheetsAsync(Desk.SchoolId)).LastOrDefault(s => s.Draft.Tasks.Any(t => t.TaskId == Id))?.Id ?? Guid.Empty;
        var id = Id ?? (From is { } key ? LibraryShelf.Find(key, CultureInfo.CurrentUICulture)?.Design.Id : null);
        if (id is { } known && await OwnTask.FindAsync(Desk.Store, Desk.SchoolId, known) is { } own) Open(own);
        else if (Id is null && From == FromNothing) Start(NewDesign.Empty(Desk.NewId(), ReadersLanguage), ReadersLanguage);
        else if (Id is null && From is { } other && LibraryShelf.Find(other, CultureInfo.CurrentUICulture) is { } entry) Start(entry.Design, entry.Words.Language);
    }

    private void Open(OwnTask own)
    {
        var design = own.Design is { Words.Count: > 0 } has ? has : NewDesign.Of(own.Task, ReadersLanguage);
        Start(design, DesignInStep.LanguageOf(design, own.Task));
        (_isKept, _isDirty, _kept) = (true, false, [own.Task]);
        _notes = [.. design.Levels.Select((l, i) => (l, i)).Where(l => !design.IsOnGrid(l.l)).Select(l => new Finding(FindingSeverity.Flagged, "GridLevelOff", l.i + 1, own.Task.Levels[l.i].Name))];
    }

    private void Start(TaskDesign design, string language)
    {
        _state = new DesignerState(design, language, Desk.NewId);
        (_isKept, _isDirty) = (false, true);
    }

    private void Touch() => (_isDirty, _isSaved, _notes) = (true, false, []);

    private void AddFactor()
    {
        if (string.IsNullOrWhiteSpace(_newFactor)) return;
        _state!.Change(d => GridEdit.Add(d, _newFactor));
        _newFactor = "";
        Touch();
    }

    // A dose that a grid begins with: what it is changed to is the teacher's.
    private void AddDose(DoseKind kind)
    {
        decimal[] amounts = kind switch
        {
            DoseKind.HoldS => [3, 5, 10],
            DoseKind.RepetitionsCount => [3, 5, 8],
            DoseKind.DistanceM => [2, 3, 5],
            DoseKind.HeightM => [0.1m, 0.2m, 0.3m],
            _ => [1, 0.5m, 0.25m],
        };
        _state!.Change(d => amounts.Aggregate(d, (grid, amount) => GridEdit.WithDose(grid, new Dose(kind, amount))));
        Touch();
    }

    private void TakeAll()
    {
        if (_state!.Rows.Any(r => r.IsOpen)) return;
        _state.TakeAll();
        Touch();
    }

    private void TakeForm(ReachAdding adding)
    {
        _state!.TakeForm(adding.Level);
        Touch();
    }

    private void Hear(ReachAnswer answer) => _reach = answer;

    private void Undo()
    {
        if (!_state!.CanUndo) return;
        _state.Undo();
        Touch();
    }

    private async Task SaveAsync()
    {
        var task = _state!.Design.ToTask(_state.Language, Desk.SchoolId);
        var refused = TaskCheck.Of(task).Concat(KeptFindings).FirstOrDefault(f => f.IsRefused);
        // Somebody may have added the library's task in another window meanwhile: what is there is not written over unseen.
        string? isThere = null;
        _failure = refused is not null ? refused.Sentence(CultureInfo.CurrentUICulture)
            : await Desk.TryAsync(async () =>
            {
                if (!_isKept && await Desk.Store.FindTaskAsync(Desk.SchoolId, task.Id) is not null) isThere = DesignerWords.Say("ThereAlready");
                else await OwnTask.SaveAsync(Desk.Store, task, _state.Design);
            }) ?? isThere;
        if (_failure is not null) return;
        (_isDirty, _isSaved, _kept) = (false, true, [task]);
        if (!_isKept) await ShowAddressAsync($"/tasks/{task.Id}/design");
        _isKept = true;
    }
}
