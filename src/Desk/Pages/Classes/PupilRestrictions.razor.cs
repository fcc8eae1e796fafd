using Microsoft.AspNetCore.Components;
using Slantwise.Records.Schools;
using P = Slantwise.Desk.Words.PolicyWords;

namespace Slantwise.Desk.Pages.Classes;

/// <summary>One pupil's restrictions: adding, lifting, and a return in steps.</summary>
public partial class PupilRestrictions
{
    private const int FarthestDayCount = 365;

    private BodyDemand _without = BodyDemand.Inversion;
    private DateOnly? _since;
    private DateOnly? _until;
    private bool _isByHand;
    private DateOnly? _firstDay;
    private bool _isReturning;
    private Guid? _early;
    private string? _finding;
    private string? _returnFinding;
    private string? _failure;

    /// <summary>The pupil.</summary>
    [Parameter, EditorRequired]
    public Pupil Pupil { get; set; } = null!;

    /// <summary>The pupil's restrictions, those that no longer hold included.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<Restriction> Restrictions { get; set; } = [];

    /// <summary>Called when something was saved.</summary>
    [Parameter]
    public EventCallback OnChanged { get; set; }

    private IReadOnlyList<ReturnStep> Steps => Desk.School.Policy.ReturnSteps;

    /// <inheritdoc />
    protected override void OnInitialized() => (_since, _firstDay) = (Desk.Today, Desk.Today);

    private bool IsOver(Restriction restriction) => !restriction.IsLiftedByHand && restriction.Until < Desk.Today;

    private bool IsEarly(Restriction restriction) => restriction.IsLiftedByHand && restriction.Until > Desk.Today;

    private async Task AddAsync()
    {
        _finding = _until < Desk.Today && !_isByHand ? Words.DeskWords.Say("UntilPast") : _until < _since ? P.Say("UntilBeforeFirst") : null;
        if (_finding is not null) return;
        var restriction = new Restriction
        {
            SchoolId = Desk.SchoolId, Id = Desk.NewId(), PupilId = Pupil.Id, Without = _without, Since = _since, Until = _until, IsLiftedByHand = _isByHand,
        };
        _finding = await DoAsync(() => Desk.Store.SaveRestrictionAsync(restriction));
        if (_finding is null) (_since, _until, _isByHand) = (Desk.Today, null, false);
    }

    // A gate whose day has not come is lifted only by somebody who has read that.
    private async Task AskOrLiftAsync(Restriction restriction)
    {
        if (IsEarly(restriction)) _early = _early == restriction.Id ? null : restriction.Id;
        else await LiftAsync(restriction);
    }

    private async Task LiftAsync(Restriction restriction)
    {
        _failure = await DoAsync(() => restriction.LiftedOn(Desk.Today) is { } ended
            ? Desk.Store.SaveRestrictionAsync(ended)
            : Desk.Store.RemoveRestrictionAsync(Desk.SchoolId, restriction.Id));
        if (_failure is null) _early = null;
    }

    private async Task RemoveAsync(Restriction restriction) =>
        _failure = await DoAsync(() => Desk.Store.RemoveRestrictionAsync(Desk.SchoolId, restriction.Id));

    private async Task StartReturnAsync()
    {
        var isWithinReach = _firstDay is { } day && Math.Abs(day.DayNumber - Desk.Today.DayNumber) <= FarthestDayCount;
        _returnFinding = isWithinReach ? null : P.Say("StartReturnWrong");
        if (_firstDay is not { } first || !isWithinReach) return;
        var gates = ReturnGates.Of(Steps, Pupil, first, Restrictions, Desk.NewId);
        _returnFinding = await DoAsync(async () =>
        {
            foreach (var gate in gates) await Desk.Store.SaveRestrictionAsync(gate);
        });
        if (_returnFinding is null) (_isReturning, _firstDay) = (false, Desk.Today);
    }

    private async Task<string?> DoAsync(Func<Task> save)
    {
        var failure = await Desk.TryAsync(save);
        if (failure is null) await OnChanged.InvokeAsync();
        return failure;
    }
}
