using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Slantwise.Records.Units;
using Slantwise.Records.Units.Import;
using static Slantwise.Desk.Words.PlannerWords;

namespace Slantwise.Desk.Pages.Units;

/// <summary>Brings outcomes in from a file: reading, a look at what it offers, choosing, taking.</summary>
public partial class OutcomeImport
{
    private const int ShownFindingCount = 20;
    private const int ShownItemCount = 200;

    private readonly HashSet<Guid> _chosen = [];
    private OutcomeReading? _reading;
    private bool _keepsOnlyCodes;
    private string _find = "";
    private string? _failure;
    private int _round;

    [Inject]
    private DeskSchool Desk { get; set; } = null!;

    /// <summary>The unit as it is typed.</summary>
    [Parameter, EditorRequired]
    public UnitDraft Draft { get; set; } = null!;

    /// <summary>Called with how many were taken.</summary>
    [Parameter]
    public EventCallback<int> OnTaken { get; set; }

    private HashSet<Guid> There => [.. Draft.Outcomes.Select(o => o.Id)];

    private int Room => Math.Max(0, UnitLimits.OutcomeCount - Draft.Outcomes.Count);

    private List<OutcomeCandidate> Shown => [.. _reading!.Candidates.Where(c =>
        _find.Trim() is not { Length: > 0 } words || $"{c.Code} {c.Text} {c.Years}".Contains(words, StringComparison.CurrentCultureIgnoreCase))];

    private async Task ReadAsync(InputFileChangeEventArgs chosen)
    {
        Forget();
        if (chosen.File.Size > OutcomeFiles.MostBytes)
        {
            _failure = Say("ImportTooLarge", chosen.File.Name, OutcomeFiles.MostBytes / 1024 / 1024);
            return;
        }
        _failure = await Desk.TryAsync(async () =>
        {
            using var bytes = new MemoryStream();
            await using (var stream = chosen.File.OpenReadStream(OutcomeFiles.MostBytes)) await stream.CopyToAsync(bytes);
            _reading = OutcomeFiles.Read(chosen.File.Name, bytes.ToArray());
            _keepsOnlyCodes = _reading.KeepsOnlyCodes;
        });
    }

    private void Choose(Guid id, ChangeEventArgs ticked)
    {
        if (ticked.Value is true) _chosen.Add(id);
        else _chosen.Remove(id);
    }

    // What has only words cannot be kept as a code.
    private void Prune() => _chosen.RemoveWhere(id => !_reading!.Candidates.First(c => c.Id == id).CanBeTaken(_keepsOnlyCodes));

    private async Task TakeAsync()
    {
        var before = Draft.Outcomes.Count;
        var taken = _reading!.Take([.. Draft.Outcomes.Select(o => o.ToOutcome())], _chosen, _keepsOnlyCodes).Skip(before).ToList();
        if (taken.Count == 0) return;
        Draft.Outcomes.AddRange(taken.Select(OutcomeDraft.Of));
        Forget();
        _round++;
        await OnTaken.InvokeAsync(taken.Count);
    }

    private void Forget()
    {
        (_reading, _find, _failure) = (null, "", null);
        _chosen.Clear();
    }
}
