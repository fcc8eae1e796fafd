using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;
using Slantwise.Records.Tasks.Designs.Ladders;
using Slantwise.Records.Words;

namespace Slantwise.Desk.Pages.Tasks.Designer;

/// <summary>One row of the grid being edited.</summary>
public partial class GridFields
{
    /// <summary>The task being designed.</summary>
    [Parameter, EditorRequired]
    public DesignerState State { get; set; } = null!;

    /// <summary>The row.</summary>
    [Parameter, EditorRequired]
    public TaskFactor Factor { get; set; } = null!;

    /// <summary>Called after a change.</summary>
    [Parameter]
    public EventCallback OnChanged { get; set; }

    private static CultureInfo Culture => CultureInfo.CurrentCulture;

    private string Name => TaskTerms.Of(Factor, State.Words, CultureInfo.CurrentUICulture);

    private string Lines => string.Join('\n', Factor.Range.Select(v => TaskTerms.Of(Factor, v, State.Words, Culture)));

    private FactorUse Use =>
        State.Plan is not { } plan ? (Factor.Role == FactorRole.Key ? FactorUse.Key : FactorUse.Stays)
        : plan.Key.FactorKey == Factor.Key ? FactorUse.Key
        : plan.Kind != LadderKind.Classical && plan.Supporting.Any(s => s.FactorKey == Factor.Key) ? FactorUse.Helps
        : FactorUse.Stays;

    private bool MayHelp => State.Plan is { } plan && plan.Kind != LadderKind.Classical && Factor.Range.Count > 1
        && (Use == FactorUse.Helps || (Use == FactorUse.Stays && plan.Supporting.Count < LadderPlan.SupportingCountMost));

    private LadderSpan? Span => State.Plan is not { } plan ? null
        : plan.Key.FactorKey == Factor.Key ? plan.Key
        : plan.Supporting.Where(s => s.FactorKey == Factor.Key).Select(s => (LadderSpan?)s).FirstOrDefault();

    // A factor that is not moved stands where the suggested levels have it.
    private int First => Use != FactorUse.Stays && Span is { } span ? span.First
        : State.Rows is [var row, ..] && row.Level.ValueOf(Factor) is { } at && Factor.Range.ToList().IndexOf(at) is >= 0 and var place ? place : 0;

    private int Last => Span is { } span ? span.Last : First;

    private static string Text(ChangeEventArgs change) => change.Value as string ?? "";

    private string Said(int place) => LadderWords.Of(Factor, Factor.Range[place], State.Words, Culture);

    private Task Change(Func<TaskDesign, TaskDesign> change)
    {
        State.Change(change);
        return OnChanged.InvokeAsync();
    }

    private Task Ask(LadderPlan plan)
    {
        State.Ask(plan);
        return OnChanged.InvokeAsync();
    }

    private Task PickUse(FactorUse use)
    {
        if (State.Plan is not { } plan) return use == FactorUse.Key ? Change(d => GridEdit.WithKey(d, Factor.Key)) : Task.CompletedTask;
        var others = plan.Supporting.Where(s => s.FactorKey != Factor.Key).ToList();
        var whole = Span ?? new LadderSpan(Factor.Key, 0, Factor.Range.Count - 1);
        if (use == FactorUse.Key)
        {
            if (Factor.Range.Count < 2) return Change(d => GridEdit.WithKey(d, Factor.Key));
            // The one that was key helps where there is room for it.
            return Ask(plan with { Key = whole, Supporting = [.. others.Prepend(plan.Key).Where(s => s.FactorKey != Factor.Key).Take(LadderPlan.SupportingCountMost)] });
        }
        return Ask(plan with
        {
            Supporting = use == FactorUse.Helps ? [.. others, whole] : others,
            Stays = use == FactorUse.Helps ? plan.Stays : plan.Stays.Where(s => s.Key != Factor.Key).Append(new(Factor.Key, whole.First)).ToDictionary(),
        });
    }

    private Task PickFirst(int place)
    {
        var plan = State.Plan!;
        if (Use != FactorUse.Stays && Span is { } span) return Ask(With(plan, span with { First = place, Last = Math.Max(place, span.Last) }));
        return Ask(plan with { Stays = plan.Stays.Where(s => s.Key != Factor.Key).Append(new(Factor.Key, place)).ToDictionary() });
    }

    private Task PickLast(int place) => Span is { } span ? Ask(With(State.Plan!, span with { Last = place })) : Task.CompletedTask;

    private static LadderPlan With(LadderPlan plan, LadderSpan span) => plan.Key.FactorKey == span.FactorKey
        ? plan with { Key = span }
        : plan with { Supporting = [.. plan.Supporting.Select(s => s.FactorKey == span.FactorKey ? span : s)] };
}
